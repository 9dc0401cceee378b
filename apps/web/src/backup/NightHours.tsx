import type { BackupPlan } from '@eaveline/plan';
import { Drawing } from '../drawing/Drawing.tsx';
import { Thing } from '../drawing/Thing.tsx';
import { useWidth } from '../drawing/useWidth.ts';
import { roundStep, stepDecimals } from '../parts/gaugeScale.ts';
import { figure, percent } from '../words/figure.ts';

export interface NightHoursProps {
  readonly night: NonNullable<BackupPlan['night']>;
  readonly usableKwh: number;
  readonly reserve: number;
  readonly selected: string | undefined;
  readonly onSelect: (id: string) => void;
}

const HIGH = 118;
const TOP = 14;
const LEFT = 46;

/** The battery running down through a night, from full and from the reserve alone; dark after. */
export function NightHours({ night, usableKwh, reserve, selected, onSelect }: NightHoursProps) {
  const { ref, width } = useWidth<HTMLDivElement>();
  const step = roundStep(night.fullH / 6);
  const to = Math.ceil((night.fullH * 1.1) / step) * step;
  const x = (hours: number) => LEFT + (hours / to) * (width - LEFT - 30);
  const y = (kwh: number) => TOP + HIGH - (kwh / usableKwh) * HIGH;
  const here = selected === 'night';
  return (
    <div ref={ref}>
      <Drawing width={width} height={TOP + HIGH + 30} label="A night without sun">
        <Thing
          id="night"
          label={`Night without sun: from full ${figure(night.fullH, 1)} hours, from the reserve ${figure(night.reserveH, 1)} hours`}
          selected={here}
          onSelect={onSelect}
        >
          <rect className="on-tint" x={LEFT} y={TOP} width={x(to) - LEFT} height={HIGH} />
          {here && (
            <path
              d={`M${LEFT} ${y(usableKwh)}L${x(night.fullH)} ${y(0)}`}
              fill="none"
              stroke="var(--marker-wash)"
              strokeWidth="8"
            />
          )}
          <path className="pen70" d={`M${LEFT} ${y(usableKwh)}L${x(night.fullH)} ${y(0)}`} />
          <path className="pen25 hidden-line" d={`M${LEFT} ${y(usableKwh * reserve)}L${x(night.reserveH)} ${y(0)}`} />
          <text className="bold halo over-tint" x={x(night.fullH / 2) + 12} y={y(usableKwh / 2)}>
            from full, {figure(night.fullH, 1)} h
          </text>
          <text className="halo over-tint" x={x(night.reserveH) + 10} y={y(0) - 8}>
            {width < 500 ? 'from reserve' : `from the reserve of ${percent(reserve)}`}, {figure(night.reserveH, 1)} h
          </text>
          <text x={LEFT - 8} y={TOP + 5} textAnchor="end">
            {figure(usableKwh, 1)}
          </text>
          <text x={LEFT - 8} y={TOP + HIGH + 4} textAnchor="end">
            0 kWh
          </text>
          <path className="pen50" d={`M${LEFT} ${TOP - 4}V${TOP + HIGH}H${x(to)}`} />
          {Array.from({ length: Math.round(to / step) + 1 }, (_, i) => i * step).map((tick, i, ticks) => (
            <g key={tick}>
              <path className="pen25" d={`M${x(tick)} ${TOP + HIGH}v5`} />
              <text x={x(tick)} y={TOP + HIGH + 20} textAnchor="middle">
                {figure(tick, stepDecimals(step))}
                {i === ticks.length - 1 ? ' h' : ''}
              </text>
            </g>
          ))}
          <rect className="ring" x={LEFT} y={TOP} width={x(to) - LEFT} height={HIGH} />
        </Thing>
      </Drawing>
    </div>
  );
}
