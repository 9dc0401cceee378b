import {
  type BeamRaster,
  beamRaster,
  type ConvexBody,
  type Point,
  skyPatch,
  skyShare,
  stands,
  type Veil,
} from '@eaveline/physics';
import type { PlacedModule } from '../array/types.ts';
import type { ENU, RoofPlane } from '../roof/types.ts';
import type { SceneBody } from './shadeScene.ts';

/** What near objects leave of the light of one module. A module with nothing in its light has none. */
export interface ModuleShade {
  /** Share of the beam for each of the three sections; undefined where it is whole. */
  readonly beam: readonly [BeamRaster | undefined, BeamRaster | undefined, BeamRaster | undefined];
  /** Share of the sky's light that the horizon leaves, for each section. */
  readonly sky: readonly [number, number, number];
  /** What stands where the module is, in words; empty where the survey and the array agree. */
  readonly inside: readonly string[];
}

/** Cells lie in the glass, a hand's breadth above the roof: rays begin there. */
const ABOVE_ROOF_M = 0.1;
/** Points along the middle of a section, as shares of its length. */
const ALONG = [-3 / 8, -1 / 8, 1 / 8, 3 / 8];
/** Middles of the three sections, as shares of the side they divide. */
const ACROSS = [-1 / 3, 0, 1 / 3];
/** Share of the light that is not followed: the model knows it a hundred times less well. */
const TOO_LITTLE = 4e-4;
/** Sine of 1.7°: below that over the plane a beam brings less than 3 % of what it would bring upright. */
const GRAZING = 0.03;
/** A patch without edges is the whole sky. */
const ALL_ROUND = new Float64Array(0);

/**
 * Points of the three sections, four each. The strings of cells behind each bypass run along the long side, so the
 * sections divide the short one, in either orientation.
 */
export function sectionPoints(
  { centre3d, widthM, heightM }: PlacedModule,
  { along, upSlope, normal }: RoofPlane,
): readonly (readonly Point[])[] {
  const upright = heightM >= widthM;
  return ACROSS.map((across) =>
    ALONG.map((share): Point => {
      const u = (upright ? across : share) * widthM;
      const v = (upright ? share : across) * heightM;
      const at = (k: 0 | 1 | 2) => centre3d[k] + u * along[k] + v * upSlope[k] + ABOVE_ROOF_M * normal[k];
      return [at(0), at(1), at(2)];
    }),
  );
}

/**
 * Whether any of a body stands before the plane of a module by more than `GRAZING`: what is behind the plane hides
 * nothing, and light that comes along the glass is next to none.
 */
function isBefore(body: ConvexBody, point: Point, normal: ENU): boolean {
  const away = (p: Point): Point => [p[0] - point[0], p[1] - point[1], p[2] - point[2]];
  const height = (p: Point) => {
    const [e, n, u] = away(p);
    return e * normal[0] + n * normal[1] + u * normal[2];
  };
  if (body.kind === 'flat')
    return body.vertices.some((corner) => height(corner) > GRAZING * Math.hypot(...away(corner)));
  const { halfWidthM, halfHeightM } = body;
  const reach = Math.hypot(halfWidthM * Math.hypot(normal[0], normal[1]), halfHeightM * normal[2]);
  const near = Math.max(0, Math.hypot(...away(body.centre)) - Math.max(halfWidthM, halfHeightM));
  return height(body.centre) + reach > GRAZING * near;
}

/**
 * The shade of one module. Undefined where as good as nothing stands in its light, so that modules of a clear roof share
 * one year.
 *
 * @param horizonDeg  Height of the horizon for every whole degree of azimuth; what it takes of the sky alone is taken
 *                    off the plane's light already, and is not counted again.
 */
export function moduleShade(
  module: PlacedModule,
  plane: RoofPlane,
  scene: readonly SceneBody[],
  latitudeDeg: number,
  horizonDeg: ArrayLike<number> | undefined,
): ModuleShade | undefined {
  const sections = sectionPoints(module, plane);
  const { normal } = plane;
  // its own plane lies behind it
  const before = scene.filter(({ body }) =>
    sections.some((points) => points.some((point) => isBefore(body, point, normal))),
  );
  if (before.length === 0) return undefined;
  const inside = before
    .filter(({ body }) => sections.flat().some((point) => stands(point, body)))
    .map(({ name }) => `${name} stands where module ${module.name} is: measure both once more.`);
  const veilsOf = (point: Point): Veil[] =>
    before.flatMap(({ body, transmission }) => {
      if (stands(point, body)) return [{ patch: ALL_ROUND, transmission }];
      const patch = skyPatch(body, point);
      return patch === undefined ? [] : [{ patch, transmission }];
    });
  const open = skyShare(normal, [], horizonDeg);
  const three = sections.map((points) => {
    const veils = points.map(veilsOf);
    // the sky is smooth along a section: its two inner points stand for it
    const inner = [veils[1] as Veil[], veils[2] as Veil[]].map((each) => skyShare(normal, each, horizonDeg));
    const sky = ((inner[0] as number) + (inner[1] as number)) / 2;
    return { beam: beamRaster(veils, latitudeDeg), sky: open > 0 ? sky / open : 1 };
  });
  if (inside.length === 0 && three.every(({ beam, sky }) => (beam?.hidden ?? 0) < TOO_LITTLE && sky > 1 - TOO_LITTLE))
    return undefined;
  const [a, b, c] = three as [(typeof three)[0], (typeof three)[0], (typeof three)[0]];
  return { beam: [a.beam, b.beam, c.beam], sky: [a.sky, b.sky, c.sky], inside };
}
