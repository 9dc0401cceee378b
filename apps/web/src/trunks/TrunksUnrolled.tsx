import type { Job } from '@eaveline/job';
import type { Plan } from '@eaveline/plan';
import { Drawing } from '../drawing/Drawing.tsx';
import { Unread } from '../drawing/Unread.tsx';
import { OneTrunk } from './OneTrunk.tsx';
import { conductorWords } from './sizeOf.ts';
import type { Stretches, Unrolled } from './unroll.ts';

export interface TrunksUnrolledProps {
  readonly plan: Plan;
  readonly job: Job;
  readonly width: number;
  readonly stretches: Stretches;
  readonly all: readonly Unrolled[];
  readonly scale: number;
  readonly selected: string | undefined;
  readonly onSelect: (id: string) => void;
}

const ROW = 100;
const TOP = 26;

/** Street, board, home runs and trunks on one line each, units in the order of their drops. */
export function TrunksUnrolled({ plan, job, width, stretches, all, scale, selected, onSelect }: TrunksUnrolledProps) {
  const { streetX, boardX, feedX, trunkFrom } = stretches;
  const height = TOP + all.length * ROW + 8;
  const middle = TOP + (all.length * ROW) / 2 + 6;
  const { mains, system } = job.facts.supply;
  const conductor = mains.conductor;
  const size = conductor === undefined ? 'size not known' : conductorWords(conductor);
  const letters = system === 'three-phase' ? 'L1 L2 L3 N' : system === 'split-phase' ? 'L1 L2 N' : 'L1 N';
  const barY = (i: number) => TOP + i * ROW + 71;
  return (
    <Drawing width={width} height={height} label={`${all.length} trunks unrolled`}>
      {(
        [
          [0, 'street'],
          [boardX - 18, 'board'],
          [feedX - 50, 'home run'],
          [trunkFrom, `trunk, 1:${scale} along the cable`],
        ] as const
      ).map(([x, words]) => (
        <text key={words} className="qt" x={x} y="12">
          {words}
        </text>
      ))}
      {all.map((each, i) => (
        <OneTrunk
          key={each.trunk.id}
          unrolled={each}
          y={TOP + i * ROW}
          height={ROW}
          width={width}
          stretches={stretches}
          plan={plan}
          job={job}
          selected={selected === `rise:${each.trunk.id}`}
          onSelect={onSelect}
        />
      ))}
      <Unread>
        <path className="pen25 centre-line" d={`M${boardX - 20} ${TOP + 20}h62V${height - 4}h-62Z`} />
        <path d={`M${boardX} ${barY(0) - 6}V${barY(all.length - 1) + 6}`} stroke="var(--ink)" strokeWidth="5" />
        <path d={`M${streetX} ${middle}H${boardX}`} stroke="var(--ink)" strokeWidth="3" />
        <path className="on-ink" d={`M${streetX} ${middle - 7}v14l9-7Z`} />
        <path
          className="pen35"
          d={[0, 1, 2, 3]
            .slice(0, letters.split(' ').length)
            .map((k) => `M${streetX + 32 + k * 8} ${middle + 6}l8-12`)
            .join('')}
        />
        <text className="close" x="0" y={middle - 22}>
          {letters}
        </text>
        <text className="close" x="0" y={middle + 24}>
          {size}
        </text>
        <text className="close" x="0" y={middle + 40}>
          {mains.lengthM === undefined ? 'length not known' : `${mains.lengthM.toFixed(1)} m`}
        </text>
      </Unread>
    </Drawing>
  );
}
