import { type ConvexBody, cross, dot, type FlatBody, minus, type Point, roundOutline } from './convexBody.ts';

/**
 * The part of the sky a convex body stands before, seen from one point: all directions d with n·d ≥ 0 for each of its
 * normals. Three numbers a normal, east, north, up.
 */
export type SkyPatch = Float64Array;

/** Nearer to a face's plane than this a point sees the face from its edge, m. */
const EDGE_ON_M = 1e-9;

/** Of an edge's two faces one is turned to the point, and one away; a single polygon has its whole rim. */
function rim({ faces, edges, vertices }: FlatBody, point: Point): (readonly [Point, Point])[] {
  const before = faces.map(({ normal, distance }) => dot(normal, point) - distance);
  if (faces.length === 1 && Math.abs(before[0] as number) < EDGE_ON_M) return [];
  return edges.flatMap(([from, to, face, other]) => {
    const one = (before[face] as number) > EDGE_ON_M;
    const two = other !== undefined && (before[other] as number) > EDGE_ON_M;
    const bounds = other === undefined ? true : one !== two;
    return bounds ? [[vertices[from] as Point, vertices[to] as Point] as const] : [];
  });
}

/** True where the point stands in the body. A polygon has no inside. */
export function stands(point: Point, body: ConvexBody): boolean {
  if (body.kind === 'flat')
    return body.faces.length > 1 && body.faces.every(({ normal, distance }) => dot(normal, point) < distance);
  const [e, n, u] = minus(point, body.centre);
  return (e * e + n * n) / body.halfWidthM ** 2 + (u * u) / body.halfHeightM ** 2 < 1;
}

/**
 * The patch of sky a body hides from a point; undefined where it hides none, as a polygon seen from its edge.
 *
 * Faces turned to the point meet faces turned away in a rim; each edge A–B of it gives (A − P) × (B − P), turned
 * inward by the body's middle. Exact for flat bodies; a crown is the polygon of twenty sides with its area.
 */
export function skyPatch(body: ConvexBody, point: Point): SkyPatch | undefined {
  const toCentre = minus(body.centre, point);
  const lines =
    body.kind === 'flat'
      ? rim(body, point).map(([a, b]) => [minus(a, point), minus(b, point)] as const)
      : (roundOutline(body, toCentre) ?? []).map((a, k, all) => [a, all[(k + 1) % all.length] as Point] as const);
  if (lines.length < 3) return undefined;
  const normals = lines.flatMap(([a, b]) => {
    const n = cross(a, b);
    const size = Math.hypot(...n);
    if (!(size > 0)) return []; // the point stands in the line of the edge: it bounds nothing
    const inward = (dot(n, toCentre) < 0 ? -1 : 1) / size;
    return [n[0] * inward, n[1] * inward, n[2] * inward];
  });
  return Float64Array.from(normals);
}
