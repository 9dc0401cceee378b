import { beamOpen, type SunCells } from '@eaveline/physics';
import type { PlaneSun } from '../roof/types.ts';
import type { SunPlan } from '../sun/types.ts';
import type { SheetPower } from './modulePower.ts';
import type { ModuleShade } from './moduleShade.ts';

/** Light lost to dust between rains: common practice, no source. */
export const DUST = 0.02;
/** Sections in light this much alike work as one module: the difference is far below what the model knows. */
const ALIKE = 0.01;

/** A module's year up to its terminals. */
export interface ModuleYear {
  /** D.c. power a step, W. */
  readonly dcW: Float64Array;
  /** Light in the plane past the horizon, before near objects, glass and dust, kWh/m². */
  readonly openKwhM2: number;
  /** The same past near objects. */
  readonly bareKwhM2: number;
  /** The same behind the glass, before dust, kWh/m². */
  readonly behindGlassKwhM2: number;
  /** With the light of all three sections spread evenly over them, kWh. */
  readonly evenDcKwh: number;
  readonly dcKwh: number;
}

/** How a module's sheet turns light into power. */
type YearPower = Pick<SheetPower, 'power' | 'sectionPower'>;

/**
 * One module through the year.
 *
 *     light at a section = (beam · open + sky · share + ground) · (1 − dust)
 *     cell temperature   = air + (NOCT − 20)/800 · light in the plane
 *
 * The rule of the data sheet, which knows no wind, suits modules close over a roof: 44 °C gives 0.030 K·m²/W, the
 * usual figure there (after Ross 1980). Three sections in unlike light work as the highest hill of their summed curve.
 *
 * @param shade  What near objects leave of the light; all of it where left out.
 */
export function moduleYear(
  { steps, stepS, airC }: SunPlan,
  light: PlaneSun,
  shade: ModuleShade | undefined,
  cells: SunCells,
  { power, sectionPower }: YearPower,
  noctC: number,
): ModuleYear {
  const { beam, sky, diffuse, beamBare, skyBare, diffuseBare } = light;
  const dcW = new Float64Array(steps);
  const kPerLight = (noctC - 20) / 800;
  const skyMean = shade === undefined ? 1 : (shade.sky[0] + shade.sky[1] + shade.sky[2]) / 3;
  let bare = 0;
  let behind = 0;
  let unhidden = 0;
  let even = 0;
  let dc = 0;
  for (let i = 0; i < steps; i++) {
    const spread = diffuse[i] as number;
    const direct = beam[i] as number;
    if (spread + direct <= 0) continue;
    let inPlane = (beamBare[i] as number) + (diffuseBare[i] as number);
    unhidden += inPlane;
    let atCells = direct + spread;
    let unlike = false;
    let [a, b, c] = [1, 1, 1];
    const fromSky = sky[i] as number;
    if (shade !== undefined) {
      if (direct > 0) {
        a = openOf(shade, 0, cells, i);
        b = openOf(shade, 1, cells, i);
        c = openOf(shade, 2, cells, i);
      }
      const passed = (a + b + c) / 3;
      inPlane -= (beamBare[i] as number) * (1 - passed) + (skyBare[i] as number) * (1 - skyMean);
      atCells -= direct * (1 - passed) + fromSky * (1 - skyMean);
      unlike = (Math.max(a, b, c) - Math.min(a, b, c)) * direct > ALIKE * atCells;
    }
    const cellC = (airC[i] as number) + kPerLight * inPlane;
    const asOne = power(atCells * (1 - DUST), cellC);
    let watts = asOne;
    if (unlike && shade !== undefined) {
      const rest = spread - fromSky;
      const at = (open: number, share: number) => (direct * open + fromSky * share + rest) * (1 - DUST);
      watts = sectionPower(at(a, shade.sky[0]), at(b, shade.sky[1]), at(c, shade.sky[2]), cellC);
    }
    bare += inPlane;
    behind += atCells;
    even += asOne;
    dc += watts;
    dcW[i] = watts;
  }
  const kwh = stepS / 3.6e6;
  return {
    dcW,
    openKwhM2: unhidden * kwh,
    bareKwhM2: bare * kwh,
    behindGlassKwhM2: behind * kwh,
    evenDcKwh: even * kwh,
    dcKwh: dc * kwh,
  };
}

function openOf({ beam }: ModuleShade, section: 0 | 1 | 2, cells: SunCells, step: number): number {
  const raster = beam[section];
  return raster === undefined ? 1 : beamOpen(raster, cells, step);
}
