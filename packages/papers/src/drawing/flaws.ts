import { type Segment, segmentsOf, type TextBox, textBoxesOf } from './geometry.ts';
import type { Drawing, Point } from './model.ts';

/** An upright rectangle, mm. */
export interface Area {
  readonly leftMm: number;
  readonly bottomMm: number;
  readonly rightMm: number;
  readonly topMm: number;
}

/** What is wrong with a drawing, and how much was looked at: a check that looked at nothing proves nothing. */
export interface Flaws {
  readonly texts: number;
  readonly segments: number;
  /** Pairs of texts that lie on each other or closer than 0.3 mm. */
  readonly textOnText: readonly (readonly [string, string])[];
  /** Texts without a halo that a line passes through. */
  readonly lineThroughText: readonly string[];
  /** Texts and lines that leave the area. */
  readonly outside: readonly string[];
}

/** Clear space round every text, mm. */
const CLEAR = 0.15;

/** Looks a drawing over: lettering clear of lettering and of lines, everything inside `area`. */
export function flawsOf(drawing: Drawing, area: Area): Flaws {
  const boxes = textBoxesOf(drawing);
  const segments = segmentsOf(drawing);
  return {
    texts: boxes.length,
    segments: segments.length,
    textOnText: overlaps(boxes),
    lineThroughText: boxes.filter((box) => !box.halo && segments.some((s) => crosses(s, box))).map((box) => box.text),
    outside: [
      ...boxes.filter((box) => !box.corners.every((p) => inside(p, area))).map((box) => box.text),
      ...segments
        .filter((s) => !(inside(s.from, area) && inside(s.to, area)))
        .map((s) => `${s.layer} ${s.from.join(' ')} to ${s.to.join(' ')}`),
    ],
  };
}

/** Pairs of texts nearer than 0.3 mm to each other. */
export function overlaps(boxes: readonly TextBox[]): [string, string][] {
  const grown = boxes.map((box) => grow(box.corners, CLEAR));
  const found: [string, string][] = [];
  grown.forEach((a, i) => {
    for (let j = i + 1; j < grown.length; j++) {
      if (meet(a, grown[j] as Point[])) found.push([(boxes[i] as TextBox).text, (boxes[j] as TextBox).text]);
    }
  });
  return found;
}

/** Whether a line runs through the letters of a text. */
export function crosses(segment: Segment, box: TextBox): boolean {
  return meet([segment.from, segment.to], [...box.corners]);
}

function inside([x, y]: Point, area: Area): boolean {
  const slack = 0.011; // coordinates are rounded to 0.01 mm
  return x >= area.leftMm - slack && x <= area.rightMm + slack && y >= area.bottomMm - slack && y <= area.topMm + slack;
}

/** A turned rectangle, wider by `by` on every side. */
function grow([a, b, c, d]: readonly [Point, Point, Point, Point], by: number): Point[] {
  const wide = Math.hypot(b[0] - a[0], b[1] - a[1]) || 1;
  const along: Point = [((b[0] - a[0]) / wide) * by, ((b[1] - a[1]) / wide) * by];
  const out = (p: Point, u: number, v: number): Point => [
    p[0] + u * along[0] - v * along[1],
    p[1] + u * along[1] + v * along[0],
  ];
  return [out(a, -1, -1), out(b, 1, -1), out(c, 1, 1), out(d, -1, 1)];
}

/**
 * Whether two convex outlines share an area (or a line and an outline share a length): no axis
 * across an edge of either separates them. Touching is not meeting.
 */
function meet(a: readonly Point[], b: readonly Point[]): boolean {
  return ![...axes(a), ...axes(b)].some(([ux, uy]) => {
    const [lowA, highA] = reach(a, ux, uy);
    const [lowB, highB] = reach(b, ux, uy);
    return highA <= lowB + 1e-6 || highB <= lowA + 1e-6;
  });
}

/** Unit normals of the edges; a line also has its own direction, or its far ends would be missed. */
function axes(points: readonly Point[]): Point[] {
  const found = points.map((p, k): Point => {
    const q = points[(k + 1) % points.length] as Point;
    const length = Math.hypot(q[0] - p[0], q[1] - p[1]) || 1;
    return [(p[1] - q[1]) / length, (q[0] - p[0]) / length];
  });
  return points.length === 2
    ? found.flatMap(([x, y]): Point[] => [
        [x, y],
        [y, -x],
      ])
    : found;
}

function reach(points: readonly Point[], ux: number, uy: number): [number, number] {
  const along = points.map(([x, y]) => x * ux + y * uy);
  return [Math.min(...along), Math.max(...along)];
}
