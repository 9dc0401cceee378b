import { Thing } from '../drawing/Thing.tsx';
import { useWidth } from '../drawing/useWidth.ts';
import { roundStep } from '../parts/gaugeScale.ts';
import { MONTHS } from '../words/clock.ts';
import { figure } from '../words/figure.ts';
import { MONTH_NAMES } from './monthNames.ts';

export interface EnergyMonthsProps {
  readonly monthlyKwh: readonly number[];
  /** Low and high of a year as shares of its middle; a month is drawn with the same. */
  readonly spread: readonly [number, number];
  readonly selected: string | undefined;
  readonly onSelect: (id: string) => void;
}

const LEFT = 46;
const TOP = 26;
const HIGH = 150;

/** Months as bars, each with the band of the year on its top and a line at its middle; a month is selected by its bar. */
export function EnergyMonths({ monthlyKwh, spread: [low, high], selected, onSelect }: EnergyMonthsProps) {
  const { ref, width } = useWidth<HTMLDivElement>();
  const top = Math.max(...monthlyKwh, 1) * high;
  const step = roundStep(top / 4);
  const to = Math.ceil(top / step) * step;
  const each = (width - LEFT - 4) / 12;
  const narrow = each < 40;
  const foot = TOP + HIGH;
  const y = (kwh: number) => foot - (kwh / to) * HIGH;
  const ticks = Array.from({ length: Math.round(to / step) + 1 }, (_, i) => i * step);
  return (
    <div ref={ref}>
      <svg width={width} height={foot + 28} viewBox={`0 0 ${width} ${foot + 28}`} aria-label="Energy by month">
        {ticks.map((tick, i) => (
          <g key={tick}>
            <path className="pen25" d={`M${LEFT - 5} ${y(tick)}H${LEFT}`} />
            {i === ticks.length - 1 ? (
              <text x="0" y={y(tick) - 7}>{`${figure(tick, 0)} kWh`}</text>
            ) : (
              <text x={LEFT - 8} y={y(tick) + 4.5} textAnchor="end">
                {figure(tick, 0)}
              </text>
            )}
          </g>
        ))}
        {monthlyKwh.map((kwh, m) => {
          const id = `month:${m + 1}`;
          const x = LEFT + m * each + each * 0.16;
          const wide = each * 0.68;
          const on = selected === id || selected === `day:${m + 1}`;
          return (
            <Thing
              key={id}
              id={id}
              label={`${MONTH_NAMES[m]}, ${figure(kwh, 0)} kWh`}
              selected={on}
              onSelect={onSelect}
            >
              <rect className="on-film" x={LEFT + m * each} y={TOP} width={each} height={HIGH + 24} />
              <rect
                className={`${on ? 'pen70 on-wash' : 'pen35 on-film'}`}
                x={x}
                y={y(kwh)}
                width={wide}
                height={foot - y(kwh)}
              />
              <rect className="on-deep" x={x} y={y(kwh * high)} width={wide} height={y(kwh * low) - y(kwh * high)} />
              <path className="pen25" d={`M${x} ${y(kwh * low)}H${x + wide}M${x} ${y(kwh * high)}H${x + wide}`} />
              <path className="pen70" d={`M${x} ${y(kwh)}H${x + wide}`} />
              {(!narrow || on) && (
                <text
                  className={on ? 'close bold halo' : 'close'}
                  x={x + wide / 2}
                  y={y(kwh * high) - 5}
                  textAnchor="middle"
                >
                  {figure(kwh, 0)}
                </text>
              )}
              <text className={narrow ? 'close' : ''} x={x + wide / 2} y={foot + 18} textAnchor="middle">
                {MONTHS[m]}
              </text>
              <rect className="ring" x={LEFT + m * each + 2} y={TOP} width={each - 4} height={HIGH + 24} />
            </Thing>
          );
        })}
        <path className="pen50" d={`M${LEFT} ${TOP - 2}V${foot}H${width}`} />
      </svg>
    </div>
  );
}
