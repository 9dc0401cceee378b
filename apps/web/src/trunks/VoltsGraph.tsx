import { useId } from 'react';
import { Hatch } from '../drawing/Hatch.tsx';
import { type Px, pathOf } from '../drawing/point.ts';
import { roundStep, stepDecimals } from '../parts/gaugeScale.ts';
import { figure } from '../words/figure.ts';
import { spread } from './spread.ts';
import type { Stretches, Unrolled } from './unroll.ts';

export interface VoltsGraphProps {
  readonly width: number;
  readonly stretches: Stretches;
  readonly all: readonly Unrolled[];
  readonly limitV: number | undefined;
  readonly nominalV: number;
  /** Id of the trunk one is on. */
  readonly selected: string | undefined;
}

const TOP = 34;
const HIGH = 200;

/** Volts above the point of supply with every unit at full, on the axis of the drawing above it. */
export function VoltsGraph({ width, stretches, all, limitV, nominalV, selected }: VoltsGraphProps) {
  const hatch = useId();
  const { streetX, boardX, trunkTo } = stretches;
  const worst = Math.max(...all.map(({ trunk }) => trunk.rise.totalV), limitV ?? 0);
  const step = roundStep(worst / 6);
  const top = Math.ceil((worst * 1.06) / step) * step;
  const y = (volts: number) => TOP + HIGH - (volts / top) * HIGH;
  const right = trunkTo + 12;
  const curves = all.map(({ trunk, x, feedX }) => {
    const board = trunk.rise.mainsV;
    const feed = board + trunk.homeRun.riseV;
    const stem: Px[] = [
      [streetX, y(0)],
      [boardX, y(board)],
      [feedX, y(feed)],
    ];
    const dots = trunk.drops.flatMap(({ number, aboveSupplyV, unitId }) => {
      const at = x.get(number);
      return at === undefined || unitId === undefined ? [] : [{ at: [at, y(aboveSupplyV)] as Px, volts: aboveSupplyV }];
    });
    const last = dots.reduce<Px | undefined>((a, { at }) => (a === undefined || at[0] > a[0] ? at : a), undefined);
    return { trunk, stem, dots, last };
  });
  const labels = spread(
    curves.map(({ trunk, last }) => ({ id: trunk.id, y: last?.[1] ?? y(trunk.rise.totalV) })),
    17,
    TOP + HIGH,
  );
  const words = all.map(({ trunk }) => `trunk ${trunk.name} ${figure(trunk.rise.totalV, 2)} V`).join(', ');
  return (
    <svg
      width={width}
      height={TOP + HIGH + 34}
      viewBox={`0 0 ${width} ${TOP + HIGH + 34}`}
      role="img"
      aria-label={`Volts above the street, all units at full: ${words}${limitV === undefined ? '' : `; limit ${figure(limitV, 2)} V`}`}
    >
      <defs>
        <Hatch id={hatch} />
      </defs>
      <text className="bold" x="0" y="12">
        Volts above the street, all units at full
      </text>
      {limitV !== undefined && (
        <>
          <rect
            x={streetX}
            y={TOP}
            width={right - streetX}
            height={Math.max(y(limitV) - TOP, 0)}
            fill={`url(#${hatch})`}
          />
          <path className="pen70 in-fails" d={`M${streetX} ${y(limitV)}H${right}`} />
          <text className="bold fa halo" x={streetX + 8} y={y(limitV) + 16}>
            limit {figure(limitV, 2)} V: {figure((limitV / nominalV) * 100, 1)} % of {nominalV} V
          </text>
        </>
      )}
      {Array.from({ length: Math.round(top / step) + 1 }, (_, i) => i * step).map((tick, i, ticks) => (
        <g key={tick}>
          <path className="pen25" d={`M${streetX - 5} ${y(tick)}H${streetX}`} />
          <text x={streetX - 8} y={y(tick) + 4.5} textAnchor="end">
            {figure(tick, stepDecimals(step))}
            {i === ticks.length - 1 ? ' V' : ''}
          </text>
        </g>
      ))}
      <path className="pen25 dotted-line" d={`M${boardX} ${TOP}V${TOP + HIGH}`} />
      {curves.map(({ trunk, stem, dots }) => {
        const here = trunk.id === selected;
        const drawn = [...dots].sort((a, b) => a.at[0] - b.at[0]);
        return (
          <g key={trunk.id}>
            {here && (
              <>
                <path d={pathOf(stem)} fill="none" stroke="var(--marker-wash)" strokeWidth="8" />
                <path d={pathOf(drawn.map(({ at }) => at))} fill="none" stroke="var(--marker-wash)" strokeWidth="8" />
              </>
            )}
            <path className={here ? 'pen70' : 'pen25'} d={pathOf(stem)} />
            {drawn.length > 0 && <path className={here ? 'pen70' : 'pen25'} d={pathOf(drawn.map(({ at }) => at))} />}
            {here &&
              drawn.map(({ at: [cx, cy], volts }) => (
                <circle
                  key={cx}
                  className={limitV !== undefined && volts > limitV ? 'on-fails' : 'on-ink'}
                  cx={cx}
                  cy={cy}
                  r="3.4"
                />
              ))}
          </g>
        );
      })}
      {curves.map(({ trunk, last }) => {
        const at = labels.get(trunk.id) ?? 0;
        const over = limitV !== undefined && trunk.rise.totalV > limitV;
        return (
          <g key={trunk.id}>
            {last && <path className="pen25 in-quiet" d={`M${last[0] + 6} ${last[1]}L${right + 4} ${at}h8`} />}
            <text className={`${trunk.id === selected ? 'bold' : ''} ${over ? 'fa' : ''}`} x={right + 15} y={at + 4.5}>
              {trunk.name} {figure(trunk.rise.totalV, 2)}
            </text>
          </g>
        );
      })}
      <path className="pen50" d={`M${streetX} ${TOP}V${TOP + HIGH}H${right}`} />
      <text className="qt" x={(streetX + boardX) / 2} y={TOP + HIGH + 20} textAnchor="middle">
        mains
      </text>
      <text className="qt" x={(boardX + stretches.trunkFrom) / 2} y={TOP + HIGH + 20} textAnchor="middle">
        home run
      </text>
      <text className="qt" x={(stretches.trunkFrom + right) / 2} y={TOP + HIGH + 20} textAnchor="middle">
        along the trunk
      </text>
    </svg>
  );
}
