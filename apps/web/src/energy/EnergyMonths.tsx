import { Drawing } from '../drawing/Drawing.tsx';
import { Thing } from '../drawing/Thing.tsx';
import { useWidth } from '../drawing/useWidth.ts';
import { roundStep } from '../parts/gaugeScale.ts';
import { MONTHS } from '../words/clock.ts';
import { figure } from '../words/figure.ts';

export interface EnergyMonthsProps {
  readonly monthlyKwh: readonly number[];
  /** Low and high of a year as shares of its middle; a month is drawn with the same. */
  readonly spread: readonly [number, number];
  readonly selected: boolean;
  readonly onSelect: () => void;
}

const LEFT = 46;
const TOP = 16;
const HIGH = 168;

/** Months as bars, each with the band of the year on its top and a line at its middle. */
export function EnergyMonths({ monthlyKwh, spread: [low, high], selected, onSelect }: EnergyMonthsProps) {
  const { ref, width } = useWidth<HTMLDivElement>();
  const top = Math.max(...monthlyKwh, 1) * high;
  const step = roundStep(top / 4);
  const to = Math.ceil(top / step) * step;
  const each = (width - LEFT - 4) / 12;
  const y = (kwh: number) => TOP + HIGH - (kwh / to) * HIGH;
  const words = monthlyKwh.map((kwh, m) => `${MONTHS[m]} ${figure(kwh, 0)}`).join(', ');
  return (
    <div ref={ref}>
      <Drawing width={width} height={TOP + HIGH + 28} label="Energy of each month">
        <Thing id="year" label={`Energy by month, kWh: ${words}`} selected={selected} onSelect={onSelect}>
          <rect className="on-film" x="0" y="0" width={width} height={TOP + HIGH} />
          {monthlyKwh.map((kwh, m) => {
            const x = LEFT + m * each + each * 0.16;
            const wide = each * 0.68;
            return (
              <g key={MONTHS[m]}>
                <rect
                  className={`pen35 ${selected ? 'on-wash' : 'on-film'}`}
                  x={x}
                  y={y(kwh)}
                  width={wide}
                  height={TOP + HIGH - y(kwh)}
                />
                <rect className="on-deep" x={x} y={y(kwh * high)} width={wide} height={y(kwh * low) - y(kwh * high)} />
                <path className="pen25" d={`M${x} ${y(kwh * low)}H${x + wide}M${x} ${y(kwh * high)}H${x + wide}`} />
                <path className="pen70" d={`M${x} ${y(kwh)}H${x + wide}`} />
                <text className="close" x={x + wide / 2} y={y(kwh * high) - 5} textAnchor="middle">
                  {figure(kwh, 0)}
                </text>
                <text className={each < 34 ? 'close' : ''} x={x + wide / 2} y={TOP + HIGH + 18} textAnchor="middle">
                  {MONTHS[m]}
                </text>
              </g>
            );
          })}
          {Array.from({ length: Math.round(to / step) + 1 }, (_, i) => i * step).map((tick, i, ticks) => (
            <g key={tick}>
              <path className="pen25" d={`M${LEFT - 5} ${y(tick)}H${LEFT}`} />
              <text x={LEFT - 8} y={y(tick) + 4.5} textAnchor="end">
                {figure(tick, 0)}
                {i === ticks.length - 1 && ' '}
              </text>
            </g>
          ))}
          <text className="qt" x="0" y="10">
            kWh
          </text>
          <path className="pen50" d={`M${LEFT} ${TOP - 2}V${TOP + HIGH}H${width}`} />
          <rect className="ring" x={LEFT - 2} y={TOP - 8} width={width - LEFT} height={HIGH + 10} />
        </Thing>
      </Drawing>
    </div>
  );
}
