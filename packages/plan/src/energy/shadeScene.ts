import type { SiteFacts } from '@eaveline/job';
import { block, type ConvexBody, crown, cylinder, flatPolygon, type Point, prism } from '@eaveline/physics';
import type { ENU, RoofPlane, UV } from '../roof/types.ts';

type SiteObject = SiteFacts['objects'][string];

/** Something that may stand between a module and the sky. */
export interface SceneBody {
  readonly name: string;
  readonly body: ConvexBody;
  readonly transmission: number;
}

/** A place on a plane in the house's own coordinates. */
export function onPlane({ outline, outline3d, along, upSlope }: RoofPlane, [u, v]: UV): ENU {
  const [u0, v0] = outline[0] as UV;
  const [e, n, up] = outline3d[0] as ENU;
  const [du, dv] = [u - u0, v - v0];
  return [
    e + du * along[0] + dv * upSlope[0],
    n + du * along[1] + dv * upSlope[1],
    up + du * along[2] + dv * upSlope[2],
  ];
}

/** An object of the survey: a tree is a crown from foot to top, a building a square block, its sides to the compass. */
function siteBody({ kind, eastM, northM, baseM, heightM, widthM }: SiteObject): ConvexBody {
  switch (kind) {
    case 'tree':
      return crown([eastM, northM, baseM], widthM, heightM);
    case 'pole':
      return cylinder([eastM, northM, baseM], widthM / 2, heightM);
    case 'building':
      return block([eastM, northM, baseM + heightM / 2], widthM, widthM, heightM);
  }
}

/** What stands on a plane goes straight up from its four corners to one height above its middle. */
function obstructionBody(plane: RoofPlane, thing: RoofPlane['obstructions'][number]): ConvexBody | undefined {
  const { centre, widthM, depthM, heightM } = thing;
  if (!(widthM > 0 && depthM > 0 && heightM > 0)) return undefined;
  const [u, v] = centre;
  const foot = [
    [-1, -1],
    [1, -1],
    [1, 1],
    [-1, 1],
  ].map(([x = 0, y = 0]) => onPlane(plane, [u + (x * widthM) / 2, v + (y * depthM) / 2]));
  const top = onPlane(plane, centre)[2] + heightM;
  // a low thing on a steep slope ends at its upper side
  const corners = foot.map(([e, n, up]): Point => [e, n, Math.max(top, up + 0.01)]);
  return prism(foot, corners);
}

/** All that can stand in the light of a job's modules: objects about the house, things on the roof, its other planes. */
export function shadeScene(objects: readonly SiteObject[], planes: readonly RoofPlane[]): SceneBody[] {
  const near = objects.map((object) => ({
    name: object.name,
    body: siteBody(object),
    transmission: object.transmission,
  }));
  const onRoof = planes.flatMap((plane) =>
    plane.obstructions.flatMap((thing) => {
      const body = obstructionBody(plane, thing);
      return body === undefined ? [] : [{ name: thing.name, body, transmission: 0 }];
    }),
  );
  const roof = planes
    .filter(({ areaM2 }) => areaM2 > 0)
    .map(({ name, outline3d }) => ({ name, body: flatPolygon(outline3d), transmission: 0 }));
  return [...near, ...onRoof, ...roof];
}
