import type { PlaneFacts } from '../schema/facts.ts';

/** A point in a plane's own coordinates, m: along the eave to the right, and up the slope. */
export type PlanePoint = readonly [uM: number, vM: number];

/** A point of the house, m: east, north, up, from the house's own origin. */
export type HousePoint = readonly [eastM: number, northM: number, upM: number];

type Placed = Pick<PlaneFacts, 'facingDeg' | 'pitchDeg' | 'eaveLeft'>;

/** Corners of a plane, eave left first, anticlockwise as seen from above it; a ridge of no length is one corner. */
export function planeOutline(
  plane: Pick<PlaneFacts, 'eaveLengthM' | 'slopeLengthM' | 'ridgeFromM' | 'ridgeToM'>,
): PlanePoint[] {
  const { eaveLengthM, slopeLengthM, ridgeFromM, ridgeToM } = plane;
  const outline: PlanePoint[] = [
    [0, 0],
    [eaveLengthM, 0],
    [ridgeToM, slopeLengthM],
  ];
  if (ridgeFromM !== ridgeToM) outline.push([ridgeFromM, slopeLengthM]);
  return outline;
}

/**
 * Where a point of a plane stands in the house.
 *
 * Seen from in front of the eave the plane's right hand lies 90° left of the way it faces: on a north plane, west.
 */
export function planeToHouse(plane: Placed, [uM, vM]: PlanePoint): HousePoint {
  const facing = (plane.facingDeg * Math.PI) / 180;
  const pitch = (plane.pitchDeg * Math.PI) / 180;
  const inM = vM * Math.cos(pitch);
  return [
    plane.eaveLeft.eastM - uM * Math.cos(facing) - inM * Math.sin(facing),
    plane.eaveLeft.northM + uM * Math.sin(facing) - inM * Math.cos(facing),
    plane.eaveLeft.heightM + vM * Math.sin(pitch),
  ];
}

/** Straight distance between two points of the house, m. */
export function apartM(a: HousePoint, b: HousePoint): number {
  return Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]);
}
