import type { RailCut } from '@eaveline/plan';
import { useId } from 'react';
import { Hatch } from '../drawing/Hatch.tsx';
import { useWidth } from '../drawing/useWidth.ts';
import { figure } from '../words/figure.ts';

export interface RailCutsProps {
  readonly cuts: readonly RailCut[];
}

const ROW = 30;
const LEFT = 30;

/** Every bar with the pieces cut from it; what is left over is hatched. */
export function RailCuts({ cuts }: RailCutsProps) {
  const { ref, width } = useWidth<HTMLDivElement>();
  const hatch = useId();
  const longest = Math.max(...cuts.map(({ stockMm }) => stockMm));
  const perMm = (width - LEFT - 8) / longest;
  const words = cuts.map(
    ({ bar, pieces, offcutMm }) =>
      `bar ${bar}: ${pieces.map(({ railName, lengthMm }) => `${railName} ${figure(lengthMm, 0)}`).join(', ')}, left ${figure(offcutMm, 0)} mm`,
  );
  return (
    <div ref={ref}>
      <svg width={width} height={cuts.length * ROW + 10} role="img" aria-label={words.join('; ')}>
        <defs>
          <Hatch id={hatch} ink="quiet" gap={5} />
        </defs>
        {cuts.map(({ bar, stockMm, pieces, offcutMm }, i) => {
          const y = 8 + i * ROW;
          let at = LEFT;
          return (
            <g key={bar}>
              <text className="qt" x="0" y={y + 16}>
                {bar}
              </text>
              {pieces.map(({ railId, railName, lengthMm }) => {
                const x = at;
                const wide = lengthMm * perMm;
                at += wide + 1;
                return (
                  <g key={railId + x}>
                    <rect className="pen35 on-film" x={x} y={y} width={wide} height="22" />
                    {wide > 34 && (
                      <text className="close" x={x + wide / 2} y={y + 15.5} textAnchor="middle">
                        {wide > 110 ? `${railName} ${figure(lengthMm, 0)}` : figure(lengthMm, 0)}
                      </text>
                    )}
                  </g>
                );
              })}
              <rect
                x={at}
                y={y + 3}
                width={Math.max(LEFT + stockMm * perMm - at, 0)}
                height="16"
                fill={`url(#${hatch})`}
              />
              {offcutMm * perMm > 40 && (
                <text className="close qt halo" x={(at + LEFT + stockMm * perMm) / 2} y={y + 15.5} textAnchor="middle">
                  {figure(offcutMm, 0)}
                </text>
              )}
            </g>
          );
        })}
      </svg>
    </div>
  );
}
