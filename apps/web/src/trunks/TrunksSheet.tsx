import { FindingsHere } from '../checks/FindingsHere.tsx';
import type { SheetProps } from '../desk/sheetView.ts';
import { Sideways } from '../drawing/Sideways.tsx';
import { useWidth } from '../drawing/useWidth.ts';
import { MixedColours } from '../parts/MixedColours.tsx';
import { Part } from '../parts/Part.tsx';
import { riseFinding } from './headOfTrunks.ts';
import { JumperGrid } from './JumperGrid.tsx';
import { TrunkFields } from './TrunkFields.tsx';
import { TrunkGrid } from './TrunkGrid.tsx';
import { TrunksUnrolled } from './TrunksUnrolled.tsx';
import { type Stretches, unroll } from './unroll.ts';
import { VoltsGraph } from './VoltsGraph.tsx';

/** Trunks and volts need so much room before their lettering fits. */
const LEAST_WIDTH = 660;

/** Sheet 04: every trunk unrolled, and below it the volts above the street along the same line. */
export function TrunksSheet({ plan, job, selected, onSelect }: SheetProps) {
  const { ref, width: room } = useWidth<HTMLDivElement>();
  const { trunks } = plan.trunks;
  if (trunks.length === 0) return <p>No trunk yet. Lay modules first; the units on them want a cable.</p>;
  const width = Math.max(room - 1, LEAST_WIDTH);
  const stretches: Stretches = {
    streetX: 30,
    boardX: 128,
    feedX: 240,
    trunkFrom: Math.max(width * 0.35, 262),
    trunkTo: width - 78,
  };
  const { all, scale } = unroll(trunks, stretches);
  // trunks of one system share a limit; where two systems meet on a board, the stricter is drawn
  const limits = trunks.flatMap(({ id }) => riseFinding(plan.checks.findings, id)?.limit ?? []);
  const limitV = limits.length === 0 ? undefined : Math.min(...limits);
  const chosen = trunks.find(
    ({ id }) => selected === `rise:${id}` || selected === `rise-battery:${id}` || selected?.startsWith(`jumper:${id}:`),
  );
  const at = chosen ?? worstOf(trunks);
  // without a selection the worst is shown: an edit must not turn the fields under the pen to another trunk
  const hold = () => onSelect((chosen && selected) ?? `rise:${at.id}`);
  return (
    <>
      <MixedColours mixed={job.facts.board.wiringMixed} />
      <Sideways room={ref}>
        <TrunksUnrolled
          plan={plan}
          job={job}
          width={width}
          stretches={stretches}
          all={all}
          scale={scale}
          selected={selected}
          onSelect={onSelect}
        />
        <VoltsGraph
          width={width}
          stretches={stretches}
          all={all}
          limitV={limitV}
          selected={at?.id}
          nominalV={
            at === undefined || at.rise.share === 0 ? plan.trunks.nominalV : Math.round(at.rise.totalV / at.rise.share)
          }
        />
      </Sideways>
      {at && (
        <Part title={`Trunk ${at.name}, as chosen`}>
          <TrunkFields key={at.id} trunk={at} job={job} onEnter={hold} />
        </Part>
      )}
      <Part title="All trunks" count={trunks.length}>
        <TrunkGrid plan={plan} job={job} selected={at && `rise:${at.id}`} onSelect={onSelect} />
      </Part>
      {at && (
        <Part title={`Jumpers of trunk ${at.name}`}>
          <JumperGrid key={at.id} plan={plan} job={job} trunk={at} selected={selected} onSelect={onSelect} />
        </Part>
      )}
      <FindingsHere findings={plan.checks.findings} sheet="04" selected={selected} onSelect={onSelect} />
    </>
  );
}

function worstOf(trunks: SheetProps['plan']['trunks']['trunks']) {
  return trunks.reduce((a, b) => (b.rise.totalV > a.rise.totalV ? b : a), trunks[0] as (typeof trunks)[number]);
}
