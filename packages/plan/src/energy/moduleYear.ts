import type { PlaneSun } from '../roof/types.ts';
import type { SunPlan } from '../sun/types.ts';
import type { ModulePower } from './modulePower.ts';

/** Light lost to dust between rains: common practice, no source. */
export const DUST = 0.02;

/** A module's year up to its terminals. */
export interface ModuleYear {
  /** D.c. power a step, W. */
  readonly dcW: Float64Array;
  /** Light in the plane past horizon and near objects, before glass and dust, kWh/m². */
  readonly bareKwhM2: number;
  /** The same behind the glass, before dust, kWh/m². */
  readonly behindGlassKwhM2: number;
  /** Behind the glass with no near object, kWh/m². */
  readonly unshadedKwhM2: number;
  readonly dcKwh: number;
}

/**
 * One module through the year.
 *
 *     light at the cells = (beam · open + diffuse) · (1 − dust)
 *     cell temperature   = air + (NOCT − 20)/800 · light in the plane
 *
 * The rule of the data sheet, which knows no wind, suits modules close over a roof: 44 °C gives 0.030 K·m²/W, the
 * usual figure there (after Ross 1980).
 *
 * @param open  Share of the beam that passes near objects; all of it where left out.
 */
export function moduleYear(
  { steps, stepS, airC }: SunPlan,
  light: PlaneSun,
  open: Float64Array | undefined,
  power: ModulePower,
  noctC: number,
): ModuleYear {
  const { beam, diffuse, beamBare, diffuseBare } = light;
  const dcW = new Float64Array(steps);
  const kPerLight = (noctC - 20) / 800;
  let bare = 0;
  let behind = 0;
  let unshaded = 0;
  let dc = 0;
  for (let i = 0; i < steps; i++) {
    const spread = diffuse[i] as number;
    const direct = beam[i] as number;
    if (spread + direct <= 0) continue;
    const passed = open === undefined ? 1 : (open[i] as number);
    const inPlane = (beamBare[i] as number) * passed + (diffuseBare[i] as number);
    const atCells = direct * passed + spread;
    const watts = power(atCells * (1 - DUST), (airC[i] as number) + kPerLight * inPlane);
    bare += inPlane;
    behind += atCells;
    unshaded += direct + spread;
    dc += watts;
    dcW[i] = watts;
  }
  const kwh = stepS / 3.6e6;
  return { dcW, bareKwhM2: bare * kwh, behindGlassKwhM2: behind * kwh, unshadedKwhM2: unshaded * kwh, dcKwh: dc * kwh };
}
