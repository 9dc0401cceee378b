import type { BackupPlan } from '@eaveline/plan';
import { useId } from 'react';
import { Drawing } from '../drawing/Drawing.tsx';
import { Hatch } from '../drawing/Hatch.tsx';
import { Thing } from '../drawing/Thing.tsx';
import { useWidth } from '../drawing/useWidth.ts';
import { roundStep, stepDecimals } from '../parts/gaugeScale.ts';
import { figure } from '../words/figure.ts';

export interface LinesOnBatteryProps {
  readonly backup: BackupPlan;
  readonly selected: string | undefined;
  readonly onSelect: (id: string) => void;
}

const LEFT = 62;
const ROW = 46;
/** Room that `3.66 of 5.40 kVA` takes, px. */
const LABEL = 126;

/** What runs on each kept line against what the battery gives on it, on one axis in kVA. */
export function LinesOnBattery({ backup: { byLine }, selected, onSelect }: LinesOnBatteryProps) {
  const { ref, width } = useWidth<HTMLDivElement>();
  const hatch = useId();
  const most = Math.max(...byLine.flatMap(({ runningVA, ratedVA }) => [runningVA, ratedVA]), 1) / 1000;
  const step = roundStep(most / 6);
  const to = Math.ceil((most * 1.1) / step) * step;
  const x = (va: number) => LEFT + (va / 1000 / to) * (width - LEFT - 24);
  const foot = byLine.length * ROW + 6;
  return (
    <div ref={ref}>
      <Drawing width={width} height={foot + 26} label="Running on each kept line, kVA">
        <defs>
          <Hatch id={hatch} />
        </defs>
        {byLine.map(({ line, runningVA, ratedVA, limitVA }, i) => {
          const over = runningVA > limitVA;
          const y = i * ROW;
          // beside the bar, or in it where the limit stands too near
          const bar = x(runningVA) - LEFT;
          const inBar = !over && bar > LABEL && x(limitVA) - x(runningVA) < LABEL;
          return (
            <Thing
              key={line}
              id={`line:${line}`}
              label={`${line}: ${figure(runningVA / 1000, 2)} of ${figure(limitVA / 1000, 2)} kVA, ${over ? 'fails' : 'meets'}`}
              selected={selected === `line:${line}`}
              onSelect={onSelect}
            >
              <rect
                className={selected === `line:${line}` ? 'on-wash' : 'on-film'}
                x="0"
                y={y}
                width={width}
                height={ROW - 2}
              />
              <text className="bold" x="4" y={y + 28}>
                {line}
              </text>
              <rect
                x={x(limitVA)}
                y={y + 10}
                width={Math.max(x(to * 1000) - x(limitVA), 0)}
                height="26"
                fill={`url(#${hatch})`}
              />
              <rect
                className={over ? 'pen25 on-fails' : 'pen25 on-deep'}
                x={LEFT}
                y={y + 15}
                width={Math.max(x(runningVA) - LEFT, 0)}
                height="16"
              />
              <path className="pen70 in-fails" d={`M${x(limitVA)} ${y + 6}v34`} />
              {ratedVA > limitVA && <path className="pen25 dotted-line" d={`M${x(ratedVA)} ${y + 6}v34`} />}
              <text
                className={`bold ${inBar ? '' : 'halo'} ${over ? 'fa' : ''}`}
                x={inBar ? x(runningVA) - 6 : Math.min(x(runningVA) + 8, width - 120)}
                y={y + 28}
                textAnchor={inBar ? 'end' : 'start'}
              >
                {figure(runningVA / 1000, 2)} of {figure(limitVA / 1000, 2)} kVA
              </text>
              <rect className="ring" x="0" y={y} width={width} height={ROW - 2} />
            </Thing>
          );
        })}
        <path className="pen50" d={`M${LEFT} 2V${foot}H${x(to * 1000)}`} />
        {Array.from({ length: Math.round(to / step) + 1 }, (_, i) => i * step).map((tick, i, ticks) => (
          <g key={tick}>
            <path className="pen25" d={`M${x(tick * 1000)} ${foot}v5`} />
            <text x={x(tick * 1000)} y={foot + 19} textAnchor="middle">
              {figure(tick, stepDecimals(step))}
              {i === ticks.length - 1 ? ' kVA' : ''}
            </text>
          </g>
        ))}
      </Drawing>
    </div>
  );
}
