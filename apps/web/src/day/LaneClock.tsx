import type { DayPlan } from '@eaveline/plan';
import { clock } from '../words/clock.ts';
import type { SiteNow } from './siteNow.ts';

export interface LaneClockProps {
  readonly day: DayPlan;
  readonly on: number;
  readonly left: number;
  readonly startH: number;
  readonly hours: { readonly from: number; readonly to: number };
  readonly x: (hour: number) => number;
  readonly top: number;
  readonly bottom: number;
  readonly now: SiteNow | undefined;
}

/** The ground of one day's lanes: its name, dusk and outage as bands, and the clock below. */
export function LaneClock({ day, on, left, startH, hours: { from, to }, x, top, bottom, now }: LaneClockProps) {
  const { dusk, outage } = day;
  const out = outage?.day === on ? outage : undefined;
  const width = x(to);
  const every = (width - left) / (to - from) < 24 ? 3 : 1;
  const duskX = dusk !== undefined && dusk.setH < to ? x(dusk.setH) : undefined;
  return (
    <>
      <text className="bold" x="0" y={top - 7}>
        Day {on}
      </text>
      {duskX !== undefined && (
        <>
          <rect className="on-deep" x={duskX} y={top} width={width - duskX} height={bottom - top} />
          {on === 1 && (
            <text className="qt" x={width} y={top - 7} textAnchor="end">
              dusk {clock(dusk?.setH ?? 0)}
            </text>
          )}
        </>
      )}
      {out && (
        <>
          <rect
            className="on-tint"
            x={x(startH + out.fromH)}
            y={top}
            width={x(startH + out.toH) - x(startH + out.fromH)}
            height={bottom - top - 4}
          />
          <path
            className="pen25 hidden-line"
            d={`M${x(startH + out.fromH)} ${top - 4}V${bottom}M${x(startH + out.toH)} ${top - 4}V${bottom}`}
          />
          <text className="qt close" x={Math.max(x(startH + out.fromH), left + 4)} y={top - 7}>
            {`house without power, ${clock(startH + out.fromH)} to ${clock(startH + out.toH)}`}
          </text>
        </>
      )}
      {now?.day === on && (
        <text className="bold halo" x={x(startH + now.atH) + 10} y={top - 7}>
          {clock(startH + now.atH)}
        </text>
      )}
      <path className="pen50" d={`M${left} ${bottom}H${width}`} />
      {Array.from({ length: to - from + 1 }, (_, i) => from + i).map((hour) => (
        <g key={hour}>
          <path className="pen25" d={`M${x(hour)} ${bottom}v${(hour - from) % every === 0 ? 6 : 4}`} />
          {(hour - from) % every === 0 && (
            <text x={x(hour)} y={bottom + 18} textAnchor="middle">
              {hour}
            </text>
          )}
        </g>
      ))}
    </>
  );
}
