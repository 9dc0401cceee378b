import type { Job } from '@eaveline/job';
import type { Finding, Plan } from '@eaveline/plan';
import { openState, worseOf } from '../checks/openState.ts';
import { DrawnMark } from '../drawing/DrawnMark.tsx';
import { Thing } from '../drawing/Thing.tsx';
import { Tube } from '../drawing/Tube.tsx';
import { figure } from '../words/figure.ts';
import { ruleWords } from '../words/ruleWords.ts';
import { dropGroups } from './dropGroups.ts';
import { riseFinding } from './headOfTrunks.ts';
import { sizeOf } from './sizeOf.ts';
import type { Stretches, Unrolled } from './unroll.ts';

export interface OneTrunkProps {
  readonly unrolled: Unrolled;
  readonly y: number;
  readonly height: number;
  readonly width: number;
  readonly stretches: Stretches;
  readonly plan: Plan;
  readonly job: Job;
  readonly selected: boolean;
  readonly onSelect: (id: string) => void;
}

/** One trunk on its line: breaker, home run cut short, feed joint, drops with the units on them, end caps, letters. */
export function OneTrunk({
  unrolled: { trunk, x, feedX },
  y,
  height,
  width,
  stretches,
  plan,
  job,
  selected,
  onSelect,
}: OneTrunkProps) {
  const { boardX, trunkFrom } = stretches;
  const wire = y + 71;
  const xs = [...x.values()];
  const from = Math.min(...xs) - 8;
  const to = Math.max(...xs) + 8;
  const circuit = plan.board.circuits.find(({ of, kind }) => kind === 'trunk' && of === trunk.id);
  const here = plan.checks.findings.filter(({ sheet }) => sheet === '04');
  const dropState = (number: number) => openState(here, { kind: 'unit', id: `${trunk.id}-${number}` });
  const open = worseOf(
    openState(here, { kind: 'trunk', id: trunk.id }),
    ...trunk.drops.map(({ number }) => dropState(number)),
  );
  const end = x.get(trunk.farDrop);
  const letters = trunk.lines.join(' ');
  const rise = riseFinding(here, trunk.id);
  // beside the rise, which ends the name: whatever else of this trunk is open
  const others = here
    .filter(({ about, state, rule }) => state !== 'meets' && rule !== 'trunk-rise' && isOf(trunk, about))
    .map(({ rule, state }) => `, ${ruleWords(rule).toLowerCase()} ${state === 'ask' ? 'asks' : 'fails'}`);
  const label = `Trunk ${trunk.name} on ${trunk.lines.join(' and ')}, ${trunk.unitCount} units${others.join('')}, fed at drop ${trunk.feedDrop}, rises ${figure(trunk.rise.totalV, 2)} V${rise === undefined ? '' : `, ${rise.state}`}`;
  const cutX = trunkFrom - 34;
  const near = xs.slice(1).map((each, i) => each - (xs[i] as number));
  const half = Math.min(14, Math.max(Math.min(...near, 30) / 2 - 1, 4));
  const under = feedX - trunkFrom > 12;
  const halo = selected ? 'halo over-tint' : 'halo';
  // a jumper's length stands under its middle, and clear of the home run where that comes up to the feed joint
  const beside = (middle: number): { x: number; textAnchor: 'start' | 'middle' | 'end' } =>
    under && Math.abs(middle - feedX) < 16
      ? { x: feedX + (middle < feedX ? -7 : 7), textAnchor: middle < feedX ? 'end' : 'start' }
      : { x: middle, textAnchor: 'middle' };
  const moduleOn = (unitId: string | undefined) =>
    plan.array.modules.find((each) => unitId !== undefined && each.unitId === unitId);
  // the row stands above the group: where one name is too long for its module, all say their place alone
  const short = trunk.drops.some(({ unitId }) => {
    const module = moduleOn(unitId);
    return module !== undefined && nameOf(module).length * CLOSE_HALF_PX > half;
  });
  return (
    <Thing id={`rise:${trunk.id}`} label={label} selected={selected} onSelect={onSelect}>
      <rect className={selected ? 'on-tint' : 'on-film'} x="0" y={y} width={width} height={height - 2} />
      {selected && (
        <rect x="-18" y={y} width="7" height={height - 2} fill="var(--marker)" stroke="var(--ink)" strokeWidth="0.5" />
      )}
      <path
        className="pen35"
        d={`M${boardX} ${wire}h14m-4-4l8 8m0-8l-8 8M${boardX + 16} ${wire}l14-9M${boardX + 34} ${wire}h12`}
      />
      <text className={`close ${halo}`} x={boardX + 8} y={wire - 14}>
        {letters}
      </text>
      <text className="close" x={boardX + 6} y={wire + 18}>
        {circuit === undefined ? '' : `${circuit.breakerA} A`}
      </text>
      {under ? (
        <Tube d={`M${boardX + 46} ${wire}H${trunkFrom - 24}l14 24H${feedX}V${wire}`} lines={trunk.lines} />
      ) : (
        <Tube d={`M${boardX + 46} ${wire}H${feedX}`} lines={trunk.lines} />
      )}
      <path d={`M${cutX - 7} ${wire - 9}l6 18M${cutX + 1} ${wire - 9}l6 18`} stroke="var(--ink)" strokeWidth="1.3" />
      <text className={`close ${halo}`} x={boardX + 50} y={wire - 11}>
        {trunk.homeRun.lengthM.toFixed(1)} m
      </text>
      <text className={`close ${halo}`} x={boardX + 50} y={wire + 18}>
        {sizeOf(job, trunk.homeRun.cableSheetId)}
      </text>
      <Tube d={`M${from} ${wire}H${to}`} lines={trunk.lines} />
      <path d={`M${from} ${wire - 5}v10M${to} ${wire - 5}v10`} stroke="var(--ink)" strokeWidth="4" />
      {dropGroups(trunk.drops, plan.array.modules, plan.roof.planes).map(({ words, first, last }) => {
        const a = (x.get(first) ?? 0) - half;
        const b = (x.get(last) ?? 0) + half;
        const close = words.length * 7 > b - a;
        return (
          <g key={first}>
            <path className="pen25 in-quiet" d={`M${a} ${wire - 44}v-5H${b}v5`} />
            <text className={`qt ${close ? 'close' : ''}`} x={a} y={wire - 54}>
              {close && words.length * 5.6 > b - a + 14 ? words.replace(', row', '') : words}
            </text>
          </g>
        );
      })}
      {trunk.drops.map(({ number, unitId, line }) => {
        const at = x.get(number);
        if (at === undefined) return null;
        const module = moduleOn(unitId);
        const far = selected && number === trunk.farDrop;
        return (
          <g key={number}>
            <path className="pen25" d={`M${at} ${wire - 3}V${wire - 15}`} />
            <rect
              className={`${far ? 'pen70 on-wash' : 'pen35 on-film'} ${unitId === undefined ? 'hidden-line' : ''}`}
              x={at - half}
              y={wire - 41}
              width={2 * half}
              height="26"
            />
            <text className="close" x={at} y={wire - 23.5} textAnchor="middle">
              {module === undefined || half < 6.5 ? '' : short ? module.place : nameOf(module)}
            </text>
            <DrawnMark state={dropState(number)} x={at + half} y={wire - 41} size={11} />
            {trunk.lines.length > 1 && line !== undefined && half > 9 && (
              <text className="zone close halo" x={at + 3} y={wire - 6}>
                {line}
              </text>
            )}
          </g>
        );
      })}
      {trunk.spans.map(({ fromDrop, toDrop, lengthM, jumper }) => {
        const a = x.get(fromDrop);
        const b = x.get(toDrop);
        if (a === undefined || b === undefined || !jumper) return null;
        return (
          <text key={`${fromDrop}-${toDrop}`} className={`close ${halo}`} {...beside((a + b) / 2)} y={wire + 16}>
            {lengthM.toFixed(2)}
          </text>
        );
      })}
      <circle cx={feedX} cy={wire} r="5.5" fill="var(--film)" stroke="var(--ink)" strokeWidth="2" />
      <circle cx={feedX} cy={wire} r="1.7" className="on-ink" />
      <text className="bold" style={{ fontSize: 'var(--letter-50)' }} x={width - 4} y={wire - 22} textAnchor="end">
        {trunk.name}
      </text>
      <text className="bold" x={width - 4} y={wire + 4} textAnchor="end">
        {letters}
      </text>
      <DrawnMark state={open} x={width - 11} y={wire + 18} word="left" />
      {end !== undefined && <title>{label}</title>}
      <rect className="ring" x="1" y={y + 1} width={width - 2} height={height - 4} />
    </Thing>
  );
}

/** Half a letter of the close face at its size in drawings, px. */
const CLOSE_HALF_PX = 3.2;

const nameOf = ({ row, place }: Plan['array']['modules'][number]) => `${row}·${place}`;

/** Whether a finding is about a trunk or one of its drops. */
function isOf({ id, drops }: Unrolled['trunk'], about: Finding['about']): boolean {
  if (about.kind === 'trunk') return about.id === id;
  return about.kind === 'unit' && drops.some(({ number }) => about.id === `${id}-${number}`);
}
