import { Thing } from '../drawing/Thing.tsx';
import { useWidth } from '../drawing/useWidth.ts';
import { roundStep } from '../parts/gaugeScale.ts';
import { figure } from '../words/figure.ts';
import type { MeanDay } from './meanDay.ts';

export interface MeanDayChartProps {
  readonly id: string;
  readonly label: string;
  readonly day: MeanDay;
  readonly selected: boolean;
  readonly onSelect: (id: string) => void;
}

const LEFT = 46;
const RIGHT = 52;
const TOP = 26;
const HIGH = 110;

/** A mean day hour by hour on the clock of the place: what the sun makes over what the house uses. */
export function MeanDayChart({ id, label, day: { sunW, houseW }, selected, onSelect }: MeanDayChartProps) {
  const { ref, width } = useWidth<HTMLDivElement>();
  const top = Math.max(...sunW, ...(houseW ?? []), 1) / 1000;
  const step = roundStep(top / 3);
  const to = Math.ceil(top / step) * step;
  const foot = TOP + HIGH;
  const x = (hour: number) => LEFT + (hour / 24) * (width - LEFT - RIGHT);
  const y = (watts: number) => foot - (watts / 1000 / to) * HIGH;
  const stairs = (watts: readonly number[]) =>
    watts.map((w, h) => `${h === 0 ? 'M' : 'L'}${x(h)} ${y(w)}H${x(h + 1)}`).join('');
  const atOnce = houseW && sunW.map((w, h) => Math.min(w, houseW[h] ?? 0));
  const ticks = Array.from({ length: Math.round(to / step) + 1 }, (_, i) => i * step);
  const peak = sunW.indexOf(Math.max(...sunW));
  return (
    <div ref={ref}>
      <svg width={width} height={foot + 24} viewBox={`0 0 ${width} ${foot + 24}`} aria-label="A mean day, hour by hour">
        <Thing id={id} label={label} selected={selected} onSelect={onSelect}>
          <rect className="on-film" x="0" y="0" width={width} height={foot} />
          {atOnce && <path className={selected ? 'on-wash' : 'on-deep'} d={`${stairs(atOnce)}V${foot}H${x(0)}Z`} />}
          {ticks.map((tick, i) => (
            <g key={tick}>
              <path className="pen25" d={`M${LEFT - 5} ${y(tick * 1000)}H${LEFT}`} />
              {i === ticks.length - 1 ? (
                <text x="0" y={y(tick * 1000) - 7}>{`${figure(tick)} kW`}</text>
              ) : (
                <text x={LEFT - 8} y={y(tick * 1000) + 4.5} textAnchor="end">
                  {figure(tick)}
                </text>
              )}
            </g>
          ))}
          <path className="pen50" d={stairs(sunW)} />
          <text className="halo" x={x(peak + 0.5)} y={y(sunW[peak] ?? 0) - 6} textAnchor="middle">
            sun
          </text>
          {houseW && (
            <>
              <path className="pen35 hidden-line" d={stairs(houseW)} />
              <text x={x(24) + 6} y={y(houseW[23] ?? 0) + 4}>
                house
              </text>
            </>
          )}
          <path className="pen50" d={`M${LEFT} ${TOP - 2}V${foot}H${x(24)}`} />
          <rect className="ring" x={LEFT - 2} y={TOP - 8} width={x(24) - LEFT + 4} height={HIGH + 10} />
        </Thing>
        {[0, 3, 6, 9, 12, 15, 18, 21, 24].map((hour) => (
          <g key={hour}>
            <path className="pen25" d={`M${x(hour)} ${foot}v5`} />
            <text x={x(hour)} y={foot + 18} textAnchor="middle">
              {hour}
            </text>
          </g>
        ))}
      </svg>
    </div>
  );
}
