import { Drawing } from '../drawing/Drawing.tsx';
import { Thing } from '../drawing/Thing.tsx';
import { useWidth } from '../drawing/useWidth.ts';
import { roundStep, stepDecimals } from '../parts/gaugeScale.ts';
import { MONTHS } from '../words/clock.ts';
import { figure } from '../words/figure.ts';

export interface MonthBarsProps {
  readonly id: string;
  /** Twelve, kWh/m² a day. */
  readonly values: readonly number[];
  /** Twelve mean temperatures, °C, lettered below. */
  readonly second: readonly number[];
  readonly selected: boolean;
  readonly onSelect: () => void;
}

const LEFT = 34;
const TOP = 14;
const HIGH = 110;

/** Twelve months of sun as bars, the mean air temperature below each. */
export function MonthBars({ id, values, second, selected, onSelect }: MonthBarsProps) {
  const { ref, width } = useWidth<HTMLDivElement>();
  const top = Math.max(...values);
  const step = roundStep(top / 3);
  const to = Math.ceil(top / step) * step;
  const each = (width - LEFT - 4) / 12;
  const y = (value: number) => TOP + HIGH - (value / to) * HIGH;
  const ticks = Array.from({ length: Math.round(to / step) + 1 }, (_, i) => i * step);
  const words = values.map((value, m) => `${MONTHS[m]} ${figure(value, 1)}`).join(', ');
  return (
    <div ref={ref}>
      <Drawing width={width} height={TOP + HIGH + 42} label="Sun of each month">
        <Thing id={id} label={`Sun on the level, kWh/m² a day: ${words}`} selected={selected} onSelect={onSelect}>
          <rect className="on-film" x="0" y="0" width={width} height={TOP + HIGH + 40} />
          {selected && (
            <rect
              x="-18"
              y="0"
              width="7"
              height={TOP + HIGH + 40}
              fill="var(--marker)"
              stroke="var(--ink)"
              strokeWidth="0.5"
            />
          )}
          {ticks.map((tick) => (
            <g key={tick}>
              <path className="pen25" d={`M${LEFT - 5} ${y(tick)}H${LEFT}`} />
              <text x={LEFT - 9} y={y(tick) + 4.5} textAnchor="end">
                {figure(tick, stepDecimals(step))}
              </text>
            </g>
          ))}
          {values.map((value, m) => (
            <g key={MONTHS[m]}>
              <rect
                className="pen35 on-deep"
                x={LEFT + m * each + each * 0.18}
                y={y(value)}
                width={each * 0.64}
                height={TOP + HIGH - y(value)}
              />
              <text className="close" x={LEFT + (m + 0.5) * each} y={y(value) - 4} textAnchor="middle">
                {figure(value, 1)}
              </text>
              <text
                x={LEFT + (m + 0.5) * each}
                y={TOP + HIGH + 17}
                textAnchor="middle"
                className={each < 34 ? 'close' : ''}
              >
                {MONTHS[m]}
              </text>
              <text className="qt close" x={LEFT + (m + 0.5) * each} y={TOP + HIGH + 34} textAnchor="middle">
                {figure(second[m] ?? 0, 0)}
              </text>
            </g>
          ))}
          <text className="qt close" x={LEFT - 9} y={TOP + HIGH + 34} textAnchor="end">
            °C
          </text>
          <path className="pen50" d={`M${LEFT} ${TOP - 6}V${TOP + HIGH}H${width}`} />
          <rect className="ring" x={LEFT} y={TOP - 8} width={width - LEFT - 2} height={HIGH + 8} />
        </Thing>
      </Drawing>
    </div>
  );
}
