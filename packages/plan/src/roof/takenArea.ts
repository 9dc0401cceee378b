import { areaM2, clipConvex, type HalfPlane } from './clipConvex.ts';
import type { RoofObstruction, UV } from './types.ts';

/** A rectangle with its sides along the plane's axes. */
export interface Box {
  readonly left: number;
  readonly right: number;
  readonly low: number;
  readonly high: number;
}

/** What an obstruction keeps free: its own rectangle grown by its clearance, corners left square. */
export function clearBox({ centre: [u, v], widthM, depthM, clearM }: RoofObstruction): Box {
  const halfU = widthM / 2 + clearM;
  const halfV = depthM / 2 + clearM;
  return { left: u - halfU, right: u + halfU, low: v - halfV, high: v + halfV };
}

/**
 * Area that obstructions take out of a convex polygon, m²: overlaps counted once.
 *
 * The rectangles' sides cut the plane into cells; each cell that any rectangle covers is clipped by the polygon.
 */
export function takenAreaM2(polygon: readonly UV[], obstructions: readonly RoofObstruction[]): number {
  const boxes = obstructions.map(clearBox);
  const us = cuts(boxes.flatMap(({ left, right }) => [left, right]));
  const vs = cuts(boxes.flatMap(({ low, high }) => [low, high]));
  let taken = 0;
  for (const [left, right] of pairs(us)) {
    for (const [low, high] of pairs(vs)) {
      const inside = (box: Box) => box.left <= left && box.right >= right && box.low <= low && box.high >= high;
      if (boxes.some(inside)) taken += areaM2(clipConvex(polygon, sides({ left, right, low, high })));
    }
  }
  return taken;
}

function cuts(values: readonly number[]): number[] {
  return [...new Set(values)].sort((a, b) => a - b);
}

function pairs(values: readonly number[]): [number, number][] {
  return values.slice(1).map((value, k) => [values[k] as number, value]);
}

function sides({ left, right, low, high }: Box): HalfPlane[] {
  return [
    { point: [left, low], inward: [1, 0] },
    { point: [right, low], inward: [-1, 0] },
    { point: [left, low], inward: [0, 1] },
    { point: [left, high], inward: [0, -1] },
  ];
}
