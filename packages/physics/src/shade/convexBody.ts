import { Refusal } from '../refusal.ts';

/** East, north, up, m. */
export type Point = readonly [east: number, north: number, up: number];

/** A body bounded by flat faces, or one flat polygon seen from both sides. */
export interface FlatBody {
  readonly kind: 'flat';
  readonly vertices: readonly Point[];
  /** Outward normal and distance of each face's plane: a point with n·p > d stands before it. */
  readonly faces: readonly { readonly normal: Point; readonly distance: number }[];
  /** Two vertices and the one or two faces they part. */
  readonly edges: readonly (readonly [from: number, to: number, face: number, other: number | undefined])[];
  readonly centre: Point;
}

/** An ellipsoid that stands upright and is round seen from above: a crown. */
export interface RoundBody {
  readonly kind: 'round';
  readonly centre: Point;
  readonly halfWidthM: number;
  readonly halfHeightM: number;
}

/** A convex body that may stand before the sky. */
export type ConvexBody = FlatBody | RoundBody;

/** Sides of a circle drawn as a polygon of its area: its edge is nowhere off by more than 1 in 100 of the radius. */
const ROUND_SIDES = 20;

/** By how much a polygon's corners stand out of the circle of the same area. */
export const EQUAL_AREA = Math.sqrt((2 * Math.PI) / ROUND_SIDES / Math.sin((2 * Math.PI) / ROUND_SIDES));

export const minus = (a: Point, b: Point): Point => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
export const dot = (a: Point, b: Point): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
export const cross = (a: Point, b: Point): Point => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];

function meanOf(points: readonly Point[]): Point {
  const sum = [0, 0, 0] as [number, number, number];
  for (const p of points) for (let k = 0; k < 3; k++) sum[k] = (sum[k] as number) + (p[k] as number);
  return [sum[0] / points.length, sum[1] / points.length, sum[2] / points.length];
}

/** Normal of a polygon by Newell's sum, length twice its area: right also where three corners stand in a line. */
function newell(corners: readonly Point[]): Point {
  let n: Point = [0, 0, 0];
  for (const [k, a] of corners.entries()) {
    const [e, no, u] = cross(a, corners[(k + 1) % corners.length] as Point);
    n = [n[0] + e, n[1] + no, n[2] + u];
  }
  return n;
}

/**
 * A body from its corners and the rings of corners that bound its faces, in either sense.
 *
 * @throws {Refusal} `degenerate` where a face has no area.
 */
export function flatBody(vertices: readonly Point[], rings: readonly (readonly number[])[]): FlatBody {
  const centre = meanOf(vertices);
  const faces = rings.map((ring) => {
    const corners = ring.map((k) => vertices[k] as Point);
    const normal = newell(corners);
    const size = Math.hypot(...normal);
    if (!(size > 0)) {
      throw new Refusal({
        code: 'inconsistent',
        at: 'rings',
        got: ring.join(', '),
        want: 'corners that span an area',
        mend: 'Give the body a width, a depth and a height above 0.',
      });
    }
    const away = dot(normal, minus(meanOf(corners), centre)) < 0 ? -1 : 1;
    const outward: Point = [(away * normal[0]) / size, (away * normal[1]) / size, (away * normal[2]) / size];
    return { normal: outward, distance: dot(outward, corners[0] as Point) };
  });
  const edges = new Map<string, [number, number, number, number | undefined]>();
  for (const [face, ring] of rings.entries()) {
    for (const [k, a] of ring.entries()) {
      const b = ring[(k + 1) % ring.length] as number;
      const name = a < b ? `${a} ${b}` : `${b} ${a}`;
      const known = edges.get(name);
      if (known === undefined) edges.set(name, [a, b, face, undefined]);
      else known[3] = face;
    }
  }
  return { kind: 'flat', vertices, faces, edges: [...edges.values()], centre };
}

/** One flat polygon, seen from both sides: another plane of the same roof. */
export const flatPolygon = (corners: readonly Point[]): FlatBody => flatBody(corners, [corners.map((_, k) => k)]);

/** What stands on a ring of corners and goes up to a ring above it: a chimney, a house, a pole. */
export function prism(foot: readonly Point[], top: readonly Point[]): FlatBody {
  const n = foot.length;
  const ring = foot.map((_, k) => k);
  const sides = ring.map((k) => [k, (k + 1) % n, n + ((k + 1) % n), n + k]);
  return flatBody([...foot, ...top], [ring, ring.map((k) => n + k), ...sides]);
}

/** An upright block, its length turned clockwise from north. */
export function block(middle: Point, lengthM: number, widthM: number, heightM: number, turnDeg = 0): FlatBody {
  const turn = (turnDeg * Math.PI) / 180;
  const [along, across] = [
    [Math.sin(turn), Math.cos(turn)],
    [Math.cos(turn), -Math.sin(turn)],
  ] as const;
  const ring = (up: number) =>
    (
      [
        [-1, -1],
        [1, -1],
        [1, 1],
        [-1, 1],
      ] as const
    ).map(
      ([l, w]): Point => [
        middle[0] + (l * lengthM * along[0]) / 2 + (w * widthM * across[0]) / 2,
        middle[1] + (l * lengthM * along[1]) / 2 + (w * widthM * across[1]) / 2,
        middle[2] + up,
      ],
    );
  return prism(ring(-heightM / 2), ring(heightM / 2));
}

/** Corners of a level circle as a polygon of the same area. */
function circle([e, n]: Point, up: number, radiusM: number): Point[] {
  return Array.from({ length: ROUND_SIDES }, (_, k) => {
    const turn = (2 * Math.PI * k) / ROUND_SIDES;
    const r = radiusM * EQUAL_AREA;
    return [e + r * Math.sin(turn), n + r * Math.cos(turn), up] as const;
  });
}

/** An upright cylinder on its foot: a pole, a flue. */
export const cylinder = (foot: Point, radiusM: number, heightM: number): FlatBody =>
  prism(circle(foot, foot[2], radiusM), circle(foot, foot[2] + heightM, radiusM));

/** An upright cone on its foot: a conifer. */
export function cone(foot: Point, radiusM: number, heightM: number): FlatBody {
  const ring = circle(foot, foot[2], radiusM).map((_, k) => k);
  const tip = ring.length;
  const sides = ring.map((k) => [k, (k + 1) % ring.length, tip]);
  return flatBody([...circle(foot, foot[2], radiusM), [foot[0], foot[1], foot[2] + heightM]], [ring, ...sides]);
}

/** A crown from its foot to its top. */
export function crown(foot: Point, widthM: number, heightM: number): RoundBody {
  return {
    kind: 'round',
    centre: [foot[0], foot[1], foot[2] + heightM / 2],
    halfWidthM: widthM / 2,
    halfHeightM: heightM / 2,
  };
}

/** Directions round the crown where it ends before the sky, as a polygon of equal area; `toCentre` from the point. */
export function roundOutline(body: RoundBody, toCentre: Point): Point[] | undefined {
  const { halfWidthM: a, halfHeightM: b } = body;
  // scaled by its half axes the crown is a ball of radius 1: what touches it stands on a circle
  const c: Point = [toCentre[0] / a, toCentre[1] / a, toCentre[2] / b];
  const away = Math.hypot(...c);
  if (away <= 1) return undefined;
  const middle = 1 - 1 / (away * away);
  const radius = (Math.sqrt(away * away - 1) / away) * EQUAL_AREA;
  const axis: Point = [c[0] / away, c[1] / away, c[2] / away];
  const side = Math.abs(axis[2]) < 0.9 ? cross(axis, [0, 0, 1]) : cross(axis, [1, 0, 0]);
  const size = Math.hypot(...side);
  const right: Point = [side[0] / size, side[1] / size, side[2] / size];
  const up = cross(right, axis);
  return Array.from({ length: ROUND_SIDES }, (_, k) => {
    const turn = (2 * Math.PI * k) / ROUND_SIDES;
    const [x, y] = [radius * Math.cos(turn), radius * Math.sin(turn)];
    return [
      (middle * c[0] + x * right[0] + y * up[0]) * a,
      (middle * c[1] + x * right[1] + y * up[1]) * a,
      (middle * c[2] + x * right[2] + y * up[2]) * b,
    ] as const;
  });
}
