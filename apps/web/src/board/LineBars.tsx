import type { BoardPlan } from '@eaveline/plan';
import { useId } from 'react';
import { Drawing } from '../drawing/Drawing.tsx';
import { Hatch } from '../drawing/Hatch.tsx';
import { wireToken } from '../drawing/linesOfModules.ts';
import { Thing } from '../drawing/Thing.tsx';
import { useWidth } from '../drawing/useWidth.ts';
import { roundStep, stepDecimals } from '../parts/gaugeScale.ts';
import { figure } from '../words/figure.ts';

export interface LineBarsProps {
  readonly board: BoardPlan;
  readonly selected: string | undefined;
  readonly onSelect: (id: string) => void;
}

const LEFT = 62;
const ROW = 34;

/** Amperes of sources on each line, and what the rule of the bars compares, on one axis. */
export function LineBars({ board, selected, onSelect }: LineBarsProps) {
  const { ref, width } = useWidth<HTMLDivElement>();
  const hatch = useId();
  const { bus, lineA } = board;
  const used = (['L1', 'L2', 'L3'] as const).filter((line) => board.circuits.some(({ lines }) => lines.includes(line)));
  const judged =
    bus.comparedA !== undefined && bus.limitA !== undefined
      ? { compared: bus.comparedA, limit: bus.limitA }
      : undefined;
  const most = Math.max(...used.map((line) => lineA[line]), judged?.compared ?? 0, judged?.limit ?? 0, 1);
  const step = roundStep(most / 6);
  const to = Math.ceil((most * 1.05) / step) * step;
  const x = (amperes: number) => LEFT + (amperes / to) * (width - LEFT - 70);
  const barsY = used.length * ROW;
  const height = barsY + (judged ? 46 : 0) + 28;
  // beside the bar, or in it where the limit stands too near
  const compared = judged === undefined ? 0 : x(judged.compared);
  const besideX =
    judged !== undefined && judged.limit > judged.compared && x(judged.limit) - compared < 120
      ? compared - 8
      : compared + 8;
  const fails = judged !== undefined && judged.compared > judged.limit;
  return (
    <div ref={ref}>
      <Drawing width={width} height={height} label="Sources on each line and on the bars, A">
        <defs>
          <Hatch id={hatch} />
        </defs>
        {used.map((line, i) => (
          <g key={line}>
            <text className="bold" x="0" y={i * ROW + 21}>
              {line}
            </text>
            <rect
              x={LEFT}
              y={i * ROW + 8}
              width={Math.max(x(lineA[line]) - LEFT, 0)}
              height="16"
              fill={wireToken(line)}
              stroke="var(--casing)"
              strokeWidth="1.5"
            />
            <text className="bold" x={x(lineA[line]) + 8} y={i * ROW + 21}>
              {figure(lineA[line], 1)} A on {line}
            </text>
          </g>
        ))}
        {judged && (
          <Thing
            id="bus"
            label={`Bars: ${bus.rule}, ${figure(judged.compared, 1)} of ${figure(judged.limit, 1)} A, ${fails ? 'fails' : 'meets'}`}
            selected={selected === 'bus'}
            onSelect={onSelect}
          >
            <rect
              className={selected === 'bus' ? 'on-wash' : 'on-film'}
              x="0"
              y={barsY}
              width={width - 70}
              height="42"
            />
            <rect
              x={x(judged.limit)}
              y={barsY + 10}
              width={Math.max(x(to) - x(judged.limit), 0)}
              height="20"
              fill={`url(#${hatch})`}
            />
            <text className="bold" x="0" y={barsY + 25}>
              bars
            </text>
            <rect
              className={fails ? 'pen25 on-fails' : 'pen25 on-deep'}
              x={LEFT}
              y={barsY + 12}
              width={x(judged.compared) - LEFT}
              height="16"
            />
            <path className="pen70 in-fails" d={`M${x(judged.limit)} ${barsY + 4}v32`} />
            <text
              className={`bold ${fails ? 'fa' : ''} ${besideX < compared ? '' : 'halo'}`}
              x={besideX}
              textAnchor={besideX < compared ? 'end' : 'start'}
              y={barsY + 25}
            >
              {figure(judged.compared, 1)} of {figure(judged.limit, 0)} A
            </text>
            <rect className="ring" x="0" y={barsY} width={width - 70} height="42" />
          </Thing>
        )}
        <path className="pen50" d={`M${LEFT} 2V${height - 22}H${x(to)}`} />
        {Array.from({ length: Math.round(to / step) + 1 }, (_, i) => i * step).map((tick, i, ticks) => (
          <g key={tick}>
            <path className="pen25" d={`M${x(tick)} ${height - 22}v5`} />
            <text x={x(tick)} y={height - 4} textAnchor="middle">
              {figure(tick, stepDecimals(step))}
              {i === ticks.length - 1 ? ' A' : ''}
            </text>
          </g>
        ))}
      </Drawing>
    </div>
  );
}
