import type { SiteFacts } from '@eaveline/job';
import { hiddenHeights, skyPatch, stands } from '@eaveline/physics';
import type { PlacedModule } from '../array/types.ts';
import { type HorizonPoint, horizonElevation } from '../roof/horizonElevation.ts';
import type { RoofPlane } from '../roof/types.ts';
import { shadeScene } from './shadeScene.ts';

/** Azimuths a sky is told in, degrees from north: every second, round to north again. */
export const SKY_AZIMUTHS: readonly number[] = Array.from({ length: 181 }, (_, k) => 2 * k);

/** What stands before the sky of one module, seen from its middle; heights in degrees, one an azimuth. */
export interface SkyOver {
  readonly bodies: readonly {
    readonly name: string;
    readonly transmission: number;
    readonly heights: readonly (readonly [number, number] | undefined)[];
  }[];
  /** Undefined where no horizon was taken. */
  readonly horizonDeg: readonly number[] | undefined;
  /** Below this the module is seen from behind. */
  readonly behindDeg: readonly number[];
}

/** The sky over one module, for a drawing: the same bodies its shade is worked out from. */
export function skyOver(
  module: PlacedModule,
  planes: readonly RoofPlane[],
  {
    objects,
    horizon,
  }: { readonly objects: readonly SiteFacts['objects'][string][]; readonly horizon: readonly HorizonPoint[] },
): SkyOver {
  const plane = planes.find(({ id }) => id === module.planeId);
  if (plane === undefined) throw new Error(`plane '${module.planeId}' is not in the roof`);
  const { centre3d } = module;
  const { normal } = plane;
  const point = [centre3d[0] + 0.1 * normal[0], centre3d[1] + 0.1 * normal[1], centre3d[2] + 0.1 * normal[2]] as const;
  const behindDeg = SKY_AZIMUTHS.map((azimuth) => {
    const turn = (azimuth * Math.PI) / 180;
    const level = normal[0] * Math.sin(turn) + normal[1] * Math.cos(turn);
    // n·d = 0 at tan e = −n_h / n_u
    return level >= 0 ? 0 : (Math.atan(-level / normal[2]) * 180) / Math.PI;
  });
  const bodies = shadeScene(objects, planes).flatMap(({ name, body, transmission }) => {
    if (stands(point, body)) return [];
    const patch = skyPatch(body, point);
    if (patch === undefined) return [];
    const heights = SKY_AZIMUTHS.map((azimuth) => hiddenHeights(patch, azimuth));
    // what stands behind the module all through takes nothing from it
    const counts = heights.some((between, k) => between !== undefined && between[1] > (behindDeg[k] as number) + 1);
    return counts ? [{ name, transmission, heights }] : [];
  });
  const rim = horizonElevation(horizon);
  return {
    bodies,
    horizonDeg: rim && SKY_AZIMUTHS.map((azimuth) => rim[azimuth] as number),
    behindDeg,
  };
}
