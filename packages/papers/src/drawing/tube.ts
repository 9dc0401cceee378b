import { Refusal } from '@eaveline/physics';
import { text } from './make.ts';
import type { Conductor, Item, Point, Tube, WireColour } from './model.ts';

export interface TubeLook {
  readonly coreMm?: number;
  /** Radius of rounded corners, mm of paper; a cable does not turn on the spot. */
  readonly bendMm?: number;
  /** Which ends bear the conductor's letters. */
  readonly letters?: 'both' | 'start' | 'end' | 'none';
  readonly of?: string;
  readonly label?: string;
}

/** A conductor as a tube with its letters beyond its ends, so that colour never tells alone. */
export function tube(points: readonly Point[], conductor: Conductor, wire: WireColour, look: TubeLook = {}): Item[] {
  if (points.length < 2) {
    throw new Refusal({
      code: 'missing',
      at: 'points',
      got: points.length,
      want: 'at least two points',
      mend: 'Give the two ends of the conductor.',
    });
  }
  const drawn: Tube = {
    kind: 'tube',
    points: rounded(points, look.bendMm ?? 0),
    coreMm: look.coreMm ?? 1,
    wire,
    conductor,
    layer: `WIRE-${conductor}`,
    pen: 1,
    line: 'full',
    ink: 'ink',
    ...(look.of === undefined ? {} : { of: look.of }),
    ...(look.label === undefined ? {} : { label: look.label }),
  };
  const ends = look.letters ?? 'both';
  const items: Item[] = [drawn];
  if (ends === 'both' || ends === 'start') items.push(letters(conductor, points[1] as Point, points[0] as Point));
  if (ends === 'both' || ends === 'end') items.push(letters(conductor, points.at(-2) as Point, points.at(-1) as Point));
  return items;
}

/** Letters just beyond `end`, on the line from `before`. */
function letters(conductor: Conductor, before: Point, end: Point): Item {
  const capMm = 2.5;
  const away = Math.atan2(end[1] - before[1], end[0] - before[0]);
  const level = Math.abs(Math.cos(away)) > 0.5;
  const reach = level ? 1.5 : capMm / 2 + 1.5;
  const x = end[0] + reach * Math.cos(away);
  const y = end[1] + reach * Math.sin(away) - capMm / 2;
  const anchor = level ? (Math.cos(away) > 0 ? 'start' : 'end') : 'middle';
  return text(conductor, [x, y], { capMm, face: 'close', weight: 700, anchor });
}

/** Corners replaced by arcs of `radius`, each of eight chords; shorter legs get a smaller bend. */
function rounded(points: readonly Point[], radius: number): Point[] {
  if (!(radius > 0)) return [...points];
  const path: Point[] = [points[0] as Point];
  for (let k = 1; k + 1 < points.length; k++) {
    path.push(...bend(points[k - 1] as Point, points[k] as Point, points[k + 1] as Point, radius));
  }
  path.push(points.at(-1) as Point);
  return path;
}

function bend(before: Point, corner: Point, after: Point, radius: number): Point[] {
  const inward = Math.hypot(before[0] - corner[0], before[1] - corner[1]);
  const outward = Math.hypot(after[0] - corner[0], after[1] - corner[1]);
  const cut = Math.min(radius, inward / 2, outward / 2);
  if (!(cut > 0)) return [corner];
  const start = towards(corner, before, cut / inward);
  const end = towards(corner, after, cut / outward);
  // a parabola through the corner's tangents: on a right angle within 6 % of the radius of the arc
  return Array.from({ length: 9 }, (_, k) => {
    const t = k / 8;
    return towards(towards(start, corner, t), towards(corner, end, t), t);
  });
}

function towards(a: Point, b: Point, part: number): Point {
  return [a[0] + (b[0] - a[0]) * part, a[1] + (b[1] - a[1]) * part];
}
