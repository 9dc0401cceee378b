import type { Point } from './model.ts';

/**
 * Lines that hatch an area, clipped to its outlines by the even-odd rule.
 *
 * The outlines are turned so that the hatch lies level; a level line then meets the edges in an
 * even number of points, and every second stretch between them is inside. Lines lie on multiples
 * of `gapMm` from the origin of the sheet, so that neighbouring areas hatch alike.
 *
 * @param outlines closed outlines, mm; inner ones leave holes.
 * @param angleDeg angle of the lines, counter-clockwise from east.
 * @param gapMm    distance between lines, above zero.
 */
export function hatchLines(outlines: readonly (readonly Point[])[], angleDeg: number, gapMm: number): [Point, Point][] {
  const turn = (-angleDeg * Math.PI) / 180;
  const level = outlines.map((outline) => outline.map((p) => rotated(p, turn)));
  const ys = level.flat().map(([, y]) => y);
  if (ys.length === 0) return [];
  const lines: [Point, Point][] = [];
  const last = Math.floor(Math.max(...ys) / gapMm);
  for (let k = Math.ceil(Math.min(...ys) / gapMm); k <= last; k++) {
    const y = k * gapMm;
    const xs = level.flatMap((outline) => crossings(outline, y)).sort((a, b) => a - b);
    for (let n = 0; n + 1 < xs.length; n += 2) {
      const [from, to] = [xs[n] as number, xs[n + 1] as number];
      if (to - from > 0.01) lines.push([rotated([from, y], -turn), rotated([to, y], -turn)]);
    }
  }
  return lines;
}

/** Where a level line meets an outline. An edge owns its lower end only, so a corner counts once. */
function crossings(outline: readonly Point[], y: number): number[] {
  const xs: number[] = [];
  outline.forEach(([ax, ay], k) => {
    const [bx, by] = outline[(k + 1) % outline.length] as Point;
    if (ay <= y === by <= y) return;
    xs.push(ax + ((y - ay) / (by - ay)) * (bx - ax));
  });
  return xs;
}

function rotated([x, y]: Point, turn: number): Point {
  const [c, s] = [Math.cos(turn), Math.sin(turn)];
  return [x * c - y * s, x * s + y * c];
}
