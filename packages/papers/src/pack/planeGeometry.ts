import type { ENU, RoofObstruction, RoofPlane, UV } from '@eaveline/plan';

/** East and north of a point of a plane, metres: what a plan shows. */
export function seenFromAbove(plane: RoofPlane, [u, v]: UV): readonly [eastM: number, northM: number] {
  const [u0, v0] = plane.outline[0] as UV;
  const [east, north] = plane.outline3d[0] as ENU;
  return [
    east + (u - u0) * plane.along[0] + (v - v0) * plane.upSlope[0],
    north + (u - u0) * plane.along[1] + (v - v0) * plane.upSlope[1],
  ];
}

/** Corners of an obstruction in its plane. */
export function cornersOf({ centre: [u, v], widthM, depthM }: RoofObstruction): UV[] {
  const [w, d] = [widthM / 2, depthM / 2];
  return [
    [u - w, v - d],
    [u + w, v - d],
    [u + w, v + d],
    [u - w, v + d],
  ];
}

/** The line at an obstruction's clear distance all round it: straight beside it, quarter circles at its corners. */
export function clearRing(thing: RoofObstruction): UV[] {
  const { clearM } = thing;
  if (clearM === 0) return [];
  return cornersOf(thing).flatMap(([u, v], corner) =>
    Array.from({ length: 7 }, (_, k): UV => {
      const turn = ((180 + 90 * corner + 15 * k) * Math.PI) / 180;
      return [u + clearM * Math.cos(turn), v + clearM * Math.sin(turn)];
    }),
  );
}
