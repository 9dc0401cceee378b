import { minus, type Px, pathOf, plus, unit } from './point.ts';
import { Unread } from './Unread.tsx';

export interface ChainProps {
  /** Points in a line, in order: a size stands between each two. */
  readonly points: readonly Px[];
  /** What each gap between them measures. */
  readonly words: readonly string[];
  /** How far off the things the line lies, px; to the left of the way the points run, seen on the drawing. */
  readonly off: number;
  readonly close?: boolean;
}

const SIGN = 4;
const GAP_FOR_LETTER = 6.4;

/** A chain of sizes: oblique strokes, extension lines that start off the thing, figures above the line. */
export function Chain({ points, words, off, close = false }: ChainProps) {
  const first = points[0];
  const last = points.at(-1);
  if (first === undefined || last === undefined || points.length < 2) return null;
  const way = unit(minus(last, first));
  const aside: Px = [way[1], -way[0]];
  const at = points.map((point) => plus(point, aside, off));
  const sign = Math.sign(off) || 1;
  // figures are read from below or from the right
  const angle = readable((Math.atan2(way[1], way[0]) * 180) / Math.PI);
  const up: Px = [Math.sin((angle * Math.PI) / 180), -Math.cos((angle * Math.PI) / 180)];
  return (
    <Unread>
      <path className="pen25" d={pathOf([plus(at[0] as Px, way, -3), plus(at.at(-1) as Px, way, 3)])} />
      {points.map((point, i) => (
        <path
          // biome-ignore lint/suspicious/noArrayIndexKey: points of a chain keep their order
          key={i}
          className="pen25"
          d={pathOf([plus(point, aside, 4 * sign), plus(at[i] as Px, aside, 5 * sign)])}
        />
      ))}
      {at.map((point, i) => (
        <path
          // biome-ignore lint/suspicious/noArrayIndexKey: as above
          key={i}
          className="pen50"
          d={pathOf([plus(plus(point, way, -SIGN), aside, -SIGN), plus(plus(point, way, SIGN), aside, SIGN)])}
        />
      ))}
      {words.map((text, i) => {
        const from = at[i];
        const to = at[i + 1];
        if (from === undefined || to === undefined) return null;
        const room = Math.hypot(to[0] - from[0], to[1] - from[1]);
        const narrow = close || text.length * GAP_FOR_LETTER * 1.25 > room;
        if (text.length * GAP_FOR_LETTER * 0.86 > room) return null; // no room: the row's own drawing has it
        const [x, y] = plus([(from[0] + to[0]) / 2, (from[1] + to[1]) / 2], up, 4);
        return (
          <text
            // biome-ignore lint/suspicious/noArrayIndexKey: as above
            key={i}
            className={narrow ? 'close halo' : 'halo'}
            textAnchor="middle"
            transform={`translate(${x} ${y}) rotate(${angle})`}
          >
            {text}
          </text>
        );
      })}
    </Unread>
  );
}

function readable(degrees: number): number {
  const turned = ((degrees % 360) + 360) % 360;
  // up and down alike are lettered up the drawing: read from the right, never from the left
  if (turned > 90 - 1e-6 && turned < 270 - 1e-6) return turned - 180;
  return turned > 270 ? turned - 360 : turned;
}
