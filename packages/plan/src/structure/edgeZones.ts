import { asEdgeWidthM, enZones } from '@eaveline/physics';
import { clipConvex, type HalfPlane, leftOf } from '../roof/clipConvex.ts';
import type { ENU, RoofPlane, UV } from '../roof/types.ts';
import type { WindMethod } from './sitePressure.ts';
import type { FootLoad } from './types.ts';

/** Plan size of the house a plane belongs to, m. */
export interface HouseSize {
  readonly breadthM: number;
  readonly depthM: number;
}

/** How deep the edge strip is, and how far along an edge the corner reaches, in plan, m. */
export interface ZoneWidths {
  readonly edgeM: number;
  readonly cornerM: number;
}

/** Planes nearer than this in plan belong to one house, m. */
const ONE_HOUSE_M = 0.5;
/** Stands for a height nobody measured: then the height bounds no zone, and the strips are at their widest. */
const NO_HEIGHT_M = 200;

/**
 * Plan size along and across a plane's eave: of all planes that touch it in plan, and not less than the plane itself
 * with a mirror image behind its ridge, for the far side of a house is often not surveyed.
 */
export function houseSize(plane: RoofPlane, all: readonly RoofPlane[]): HouseSize {
  const [e, n] = plane.along;
  const along = (p: ENU) => p[0] * e + p[1] * n;
  const across = (p: ENU) => -p[0] * n + p[1] * e;
  const points = houseOf(plane, all).flatMap(({ outline3d }) => outline3d);
  const spread = (of: (p: ENU) => number, on: readonly ENU[]) => Math.max(...on.map(of)) - Math.min(...on.map(of));
  const ridged = plane.edges.some(({ side, kind }) => side === 'ridge' && kind === 'ridge') || plane.edges.length === 3;
  const own = plane.outline3d;
  return {
    breadthM: Math.max(spread(along, points), spread(along, own)),
    depthM: Math.max(spread(across, points), spread(across, own) * (ridged ? 2 : 1)),
  };
}

function houseOf(plane: RoofPlane, all: readonly RoofPlane[]): readonly RoofPlane[] {
  const house = [plane];
  for (let k = 0; k < house.length; k++) {
    const here = house[k] as RoofPlane;
    house.push(...all.filter((other) => !house.includes(other) && touch(here, other)));
  }
  return house;
}

/** Boxes about the two planes, east and north, overlap or nearly. */
function touch(a: RoofPlane, b: RoofPlane): boolean {
  return ([0, 1] as const).every((axis) => {
    const of = (plane: RoofPlane) => plane.outline3d.map((point) => point[axis]);
    const [first, second] = [of(a), of(b)];
    return (
      Math.min(...first) <= Math.max(...second) + ONE_HOUSE_M && Math.min(...second) <= Math.max(...first) + ONE_HOUSE_M
    );
  });
}

/**
 * Widths of the edge zones, in plan.
 *
 *     AS/NZS 1170.2: a = min(0.2·b, 0.2·d, h)
 *     EN 1991-1-4: e = min(b, 2·h) with b the longer side, edges e/10, corners e/4 along
 *     ASCE 7: a = max(min(0.1·least side, 0.4·h), 0.04·least side, 0.914 m)
 */
export function zoneWidths(method: WindMethod, { breadthM, depthM }: HouseSize, roofHeightM?: number): ZoneWidths {
  const h = roofHeightM ?? NO_HEIGHT_M;
  if (method === 'AS/NZS 1170.2') {
    const edgeM = asEdgeWidthM(breadthM, depthM, h);
    return { edgeM, cornerM: edgeM };
  }
  if (method === 'EN 1991-1-4') return enZones(Math.max(breadthM, depthM), h);
  const least = Math.min(breadthM, depthM);
  const edgeM = Math.max(Math.min(0.1 * least, 0.4 * h), 0.04 * least, 0.914);
  return { edgeM, cornerM: edgeM };
}

/** A rectangle of the plane, m in its own coordinates. */
export interface Patch {
  readonly fromU: number;
  readonly toU: number;
  readonly fromV: number;
  readonly toV: number;
}

/**
 * The worst zone a patch of roof touches. Every edge of the plane counts, hips and ridges too, but a valley, which is
 * none. Distances are in plan, where they are shorter than on the slope.
 */
export function zoneOf(patch: Patch, plane: RoofPlane, { edgeM, cornerM }: ZoneWidths): FootLoad['zone'] {
  const cos = Math.cos((plane.pitchDeg * Math.PI) / 180);
  const inPlan = ([u, v]: UV): UV => [u, v * cos];
  const { fromU, toU, fromV, toV } = patch;
  const flat: UV[] = (
    [
      [fromU, fromV],
      [toU, fromV],
      [toU, toV],
      [fromU, toV],
    ] as const
  ).map(inPlan);
  const within = (index: number, widthM: number): HalfPlane => {
    const edge = plane.edges[index] as RoofPlane['edges'][number];
    const { point, inward } = leftOf(inPlan(edge.from), inPlan(edge.to), widthM);
    return { point, inward: [-inward[0], -inward[1]] };
  };
  const touches = (strips: readonly HalfPlane[]) => clipConvex(flat, strips).length > 0;
  const edges = plane.edges.map((_, k) => k).filter((k) => plane.edges[k]?.kind !== 'valley');
  const corner = edges.some((k) => {
    const next = (k + 1) % plane.edges.length;
    if (!edges.includes(next)) return false;
    return touches([within(k, edgeM), within(next, cornerM)]) || touches([within(k, cornerM), within(next, edgeM)]);
  });
  if (corner) return 'corner';
  return edges.some((k) => touches([within(k, edgeM)])) ? 'edge' : 'interior';
}
