import type { RailCut } from '@eaveline/plan';
import { useId } from 'react';
import { Hatch } from '../drawing/Hatch.tsx';
import { Thing } from '../drawing/Thing.tsx';
import { useWidth } from '../drawing/useWidth.ts';
import { roundStep } from '../parts/gaugeScale.ts';
import { figure } from '../words/figure.ts';

export interface RailCutsProps {
  readonly cuts: readonly RailCut[];
  readonly selected: string | undefined;
  readonly onSelect: (id: string) => void;
}

const ROW = 28;
const LEFT = 30;
const TOP = 6;

/** Every bar to one scale with the pieces cut from it, in the order they are sawn; what is left over is hatched. */
export function RailCuts({ cuts, selected, onSelect }: RailCutsProps) {
  const { ref, width } = useWidth<HTMLDivElement>();
  const hatch = useId();
  const longest = Math.max(...cuts.map(({ stockMm }) => stockMm));
  const perMm = (width - LEFT - 26) / longest;
  const x = (mm: number) => LEFT + mm * perMm;
  const foot = TOP + cuts.length * ROW + 2;
  const step = roundStep(longest / (width < 500 ? 3 : 6));
  const ticks = Array.from({ length: Math.floor(longest / step) + 1 }, (_, i) => i * step);
  return (
    <div ref={ref}>
      <svg
        width={width}
        height={foot + 24}
        viewBox={`0 0 ${width} ${foot + 24}`}
        aria-label="Bars to scale with the pieces cut from them"
      >
        <defs>
          <Hatch id={hatch} ink="quiet" gap={5} />
        </defs>
        {cuts.map((cut, i) => (
          <Bar
            key={cut.bar}
            cut={cut}
            y={TOP + i * ROW}
            x={x}
            hatch={hatch}
            selected={selected === `bar:${cut.bar}`}
            onSelect={onSelect}
          />
        ))}
        <path className="pen50" d={`M${x(0)} ${foot}H${x(longest)}`} />
        {ticks.map((tick, i) => (
          <g key={tick}>
            <path className="pen25" d={`M${x(tick)} ${foot}v5`} />
            <text x={x(tick)} y={foot + 18} textAnchor="middle">
              {figure(tick, 0)}
              {i === ticks.length - 1 ? ' mm' : ''}
            </text>
          </g>
        ))}
      </svg>
    </div>
  );
}

interface BarProps {
  readonly cut: RailCut;
  readonly y: number;
  readonly x: (mm: number) => number;
  readonly hatch: string;
  readonly selected: boolean;
  readonly onSelect: (id: string) => void;
}

function Bar({ cut: { bar, stockMm, pieces, offcutMm }, y, x, hatch, selected, onSelect }: BarProps) {
  const saw = (stockMm - offcutMm - pieces.reduce((sum, { lengthMm }) => sum + lengthMm, 0)) / pieces.length;
  let at = 0;
  const drawn = pieces.map((piece) => {
    const from = at;
    at += piece.lengthMm + saw;
    return { ...piece, from };
  });
  const said = pieces.map(({ railName, lengthMm }) => `${railName} ${figure(lengthMm, 0)}`).join(', ');
  const left = x(stockMm) - x(stockMm - offcutMm);
  return (
    <Thing
      id={`bar:${bar}`}
      label={`Bar ${bar}: ${said}, left ${figure(offcutMm, 0)} mm`}
      selected={selected}
      onSelect={onSelect}
    >
      <rect className="on-film" x="0" y={y - 2} width={x(stockMm)} height={ROW - 2} />
      <text className={selected ? 'bold' : 'qt'} x="0" y={y + 16}>
        {bar}
      </text>
      {drawn.map(({ railId, railName, lengthMm, from }) => {
        const wide = x(from + lengthMm) - x(from);
        const long = `${railName} ${figure(lengthMm, 0)}`;
        return (
          <g key={`${railId}-${from}`}>
            <rect
              className={selected ? 'pen70 on-wash' : 'pen35 on-film'}
              x={x(from)}
              y={y}
              width={wide}
              height={ROW - 6}
            />
            {wide > 30 && (
              <text className="close" x={x(from) + wide / 2} y={y + 15.5} textAnchor="middle">
                {long.length * 5.8 < wide ? long : figure(lengthMm, 0)}
              </text>
            )}
          </g>
        );
      })}
      <rect x={x(stockMm) - left} y={y + 3} width={left} height={ROW - 12} fill={`url(#${hatch})`} />
      <path className="pen35" d={`M${x(stockMm)} ${y - 1}v${ROW - 4}`} />
      {left > 40 && (
        <text className="close qt halo" x={x(stockMm) - left / 2} y={y + 15.5} textAnchor="middle">
          {figure(offcutMm, 0)}
        </text>
      )}
      <rect className="ring" x={x(0) - 2} y={y - 2} width={x(stockMm) - x(0) + 4} height={ROW - 2} />
    </Thing>
  );
}
