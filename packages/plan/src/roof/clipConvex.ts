import type { UV } from './types.ts';

/** Points with `along · (p − from)` not negative are kept: the half-plane to the left of a directed line. */
export interface HalfPlane {
  /** A point of the line. */
  readonly point: UV;
  /** Unit vector into the side that is kept. */
  readonly inward: UV;
}

/** How far a point lies inside a half-plane, m; negative outside. */
export function insideByM({ point, inward }: HalfPlane, [u, v]: UV): number {
  return (u - point[0]) * inward[0] + (v - point[1]) * inward[1];
}

/** The half-plane to the left of the line from one point to another, moved inward by a distance. */
export function leftOf(from: UV, to: UV, byM = 0): HalfPlane {
  const lengthM = Math.hypot(to[0] - from[0], to[1] - from[1]);
  const inward: UV = [-(to[1] - from[1]) / lengthM, (to[0] - from[0]) / lengthM];
  return { point: [from[0] + inward[0] * byM, from[1] + inward[1] * byM], inward };
}

/**
 * A convex polygon cut by half-planes, in the same turning sense; empty where nothing is left.
 *
 * Exact for convex polygons (Sutherland and Hodgman 1974, one plane at a time).
 */
export function clipConvex(polygon: readonly UV[], planes: readonly HalfPlane[]): UV[] {
  let kept: UV[] = [...polygon];
  for (const plane of planes) {
    const before = kept;
    kept = [];
    before.forEach((here, k) => {
      const next = before[(k + 1) % before.length] as UV;
      const hereM = insideByM(plane, here);
      const nextM = insideByM(plane, next);
      if (hereM >= 0) kept.push(here);
      if (hereM > 0 !== nextM > 0 && hereM !== 0 && nextM !== 0) {
        const share = hereM / (hereM - nextM);
        kept.push([here[0] + share * (next[0] - here[0]), here[1] + share * (next[1] - here[1])]);
      }
    });
  }
  return areaM2(kept) > 1e-9 ? kept : [];
}

/** Area of a polygon that runs anticlockwise, m². Gauss's shoelace formula. */
export function areaM2(polygon: readonly UV[]): number {
  let twice = 0;
  polygon.forEach(([u, v], k) => {
    const [u1, v1] = polygon[(k + 1) % polygon.length] as UV;
    twice += u * v1 - u1 * v;
  });
  return twice / 2;
}
