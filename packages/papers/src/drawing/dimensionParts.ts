import { Refusal } from '@eaveline/physics';
import { circle, line, solid, text } from './make.ts';
import type { Dimension, Leaf, LinearDimension, Point, RunningDimension } from './model.ts';

/** Extension lines start this far off the thing, and pass the dimension line by `PAST`. */
const OFF = 1;
const PAST = 1.3;
/** Half length of an oblique stroke along each axis. */
const STROKE = 1.06;
/** Clear space between a dimension line and the figure above it. */
const ABOVE = 0.9;

/** The lines and letters a dimension is drawn with. */
export function dimensionParts(dimension: Dimension): Leaf[] {
  return dimension.style === 'linear' ? linear(dimension) : runningParts(dimension);
}

/** Common practice of dimensioned drawings (ISO 129-1): figure above the line, read from below or from the right. */
function linear(d: LinearDimension): Leaf[] {
  const [dx, dy] = [d.to[0] - d.from[0], d.to[1] - d.from[1]];
  const length = Math.hypot(dx, dy);
  if (!(length > 0)) {
    throw new Refusal({
      code: 'not-positive',
      at: 'dimension',
      got: length,
      want: 'longer than 0 mm',
      mend: 'Give two different points.',
    });
  }
  const along: Point = [dx / length, dy / length];
  const left: Point = [-along[1], along[0]];
  const a = moved(d.from, left, d.offsetMm);
  const b = moved(d.to, left, d.offsetMm);
  const side = Math.sign(d.offsetMm);
  const look = { layer: d.layer, pen: d.pen, ink: d.ink } as const;

  const parts: Leaf[] = [line(a, b, look)];
  if (Math.abs(d.offsetMm) > OFF) {
    parts.push(line(moved(d.from, left, OFF * side), moved(a, left, PAST * side), look));
    parts.push(line(moved(d.to, left, OFF * side), moved(b, left, PAST * side), look));
  }
  for (const end of [a, b]) parts.push(oblique(end, along, look));

  const rotateDeg = readable((Math.atan2(dy, dx) * 180) / Math.PI);
  const up: Point = [-Math.sin((rotateDeg * Math.PI) / 180), Math.cos((rotateDeg * Math.PI) / 180)];
  const middle: Point = [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2];
  parts.push(
    text(d.text, moved(middle, up, ABOVE), {
      ...look,
      capMm: d.capMm,
      face: d.face,
      anchor: 'middle',
      rotateDeg,
      halo: true,
    }),
  );
  return parts;
}

/** A stroke at 45° through the end of a dimension line. */
function oblique([x, y]: Point, along: Point, look: { ink: Dimension['ink']; layer: Dimension['layer'] }): Leaf {
  const slant: Point = [along[0] - along[1], along[1] + along[0]];
  return line([x - slant[0] * STROKE, y - slant[1] * STROKE], [x + slant[0] * STROKE, y + slant[1] * STROKE], {
    ...look,
    pen: 0.5,
  });
}

/** Turned by half a turn where a figure would stand on its head: read from below, or from the right. */
function readable(deg: number): number {
  if (deg > 90 + 1e-9) return deg - 180;
  if (deg <= -90 + 1e-9) return deg + 180;
  return deg;
}

function runningParts(d: RunningDimension): Leaf[] {
  const across = d.along === 'right';
  const along: Point = across ? [1, 0] : [0, 1];
  const left: Point = across ? [0, 1] : [-1, 0];
  const side = Math.sign(d.offsetMm) || 1;
  const look = { layer: d.layer, pen: d.pen, ink: d.ink } as const;
  const start = moved(d.from, left, d.offsetMm);
  const reach = Math.max(0, ...d.marks.map((m) => m.atMm));

  const parts: Leaf[] = [];
  if (reach > 0) parts.push(line(start, moved(start, along, reach), look));
  parts.push(...extension(d.from, start, left, side, look), circle(start, 0.8, { ...look, pen: 0.35 }));
  parts.push(figure(d, '0', start, side));
  for (const mark of d.marks) {
    const foot = moved(d.from, along, mark.atMm);
    const end = moved(start, along, mark.atMm);
    parts.push(...extension(foot, end, left, side, look), arrow(end, along, look), figure(d, mark.text, end, side));
  }
  return parts;
}

function extension(
  foot: Point,
  end: Point,
  left: Point,
  side: number,
  look: { ink: Dimension['ink']; layer: Dimension['layer']; pen: Dimension['pen'] },
): Leaf[] {
  const far = Math.hypot(end[0] - foot[0], end[1] - foot[1]);
  return far > OFF ? [line(moved(foot, left, OFF * side), moved(end, left, PAST * side), look)] : [];
}

/** A closed arrow, 2.1 by 1.2 mm, its tip on the mark. */
function arrow(tip: Point, along: Point, look: { ink: Dimension['ink']; layer: Dimension['layer'] }): Leaf {
  const back = moved(tip, along, -2.1);
  const left: Point = [-along[1], along[0]];
  return solid([tip, moved(back, left, 0.6), moved(back, left, -0.6)], look);
}

/** The figure stands past the end of its extension line, so that no line passes through it. */
function figure(d: RunningDimension, words: string, end: Point, side: number): Leaf {
  const clear = PAST + 0.8;
  const look = { layer: d.layer, ink: d.ink, capMm: d.capMm, face: d.face, halo: true } as const;
  if (d.along === 'right') {
    const y = side > 0 ? end[1] + clear : end[1] - clear - d.capMm;
    return text(words, [end[0], y], { ...look, anchor: 'middle' });
  }
  const x = end[0] - side * clear;
  return text(words, [x, end[1] - d.capMm / 2], { ...look, anchor: side > 0 ? 'end' : 'start' });
}

function moved([x, y]: Point, along: Point, by: number): Point {
  return [x + along[0] * by, y + along[1] * by];
}
