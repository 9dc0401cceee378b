import { positive, within } from '../refusal.ts';
import type { Force } from './level.ts';

export interface EnScrewInput {
  /** Outer thread diameter, 6 to 12 mm. */
  readonly diameterMm: number;
  /** Thread in the wood, without the tip; at least six diameters. */
  readonly threadInWoodMm: number;
  /** Characteristic density, kg/m³: 350 for C24. */
  readonly densityKgPerM3: number;
  /** Between screw and grain; 90 unless said, 30 at least. */
  readonly angleToGrainDeg?: number;
  /** Screws acting together: nef = n^0.9. */
  readonly screws?: number;
}

/**
 * Withdrawal of a screw from wood by EN 1995-1-1 8.7.2 (from memory), characteristic.
 *
 *     fax = 0.52·d^−0.5·lef^−0.1·ρ^0.8,   F = nef·fax·d·lef·kd/(1.2·cos²α + sin²α),   kd = min(d/8, 1)
 *
 * Head pull-through and the screw's own tension are checked elsewhere. Batten and decking are not bite.
 */
export function enScrewWithdrawal(input: EnScrewInput): Force<'characteristic'> {
  const d = within(input.diameterMm, 6, 12, 'diameterMm', 'The formula holds for 6 to 12 mm.');
  const lef = within(input.threadInWoodMm, 6 * d, 1000, 'threadInWoodMm', 'At least six diameters of thread in wood.');
  const rho = within(input.densityKgPerM3, 200, 700, 'densityKgPerM3', '350 for C24; unknown wood: ask.');
  const alpha = (within(input.angleToGrainDeg ?? 90, 30, 90, 'angleToGrainDeg', 'End grain: ask.') * Math.PI) / 180;
  const n = positive(input.screws ?? 1, 'screws', 'Count them.');
  const fax = 0.52 * d ** -0.5 * lef ** -0.1 * rho ** 0.8;
  const tilt = 1.2 * Math.cos(alpha) ** 2 + Math.sin(alpha) ** 2;
  return { newtons: (n ** 0.9 * fax * d * lef * Math.min(d / 8, 1)) / tilt, level: 'characteristic' };
}

/** Design resistance of timber: kmod/γM; 0.9 (short, dry) and 1.3 unless said. EN 1995-1-1, from memory. */
export function enDesignResistance(
  characteristic: Force<'characteristic'>,
  { kmod = 0.9, gammaM = 1.3 }: { readonly kmod?: number; readonly gammaM?: number } = {},
): Force<'design'> {
  within(kmod, 0.3, 1.1, 'kmod', 'By service class and duration.');
  within(gammaM, 1, 2, 'gammaM', '1.3 for connections unless the annex says otherwise.');
  return { newtons: (characteristic.newtons * kmod) / gammaM, level: 'design' };
}

export interface NdsLagInput {
  /** Nominal diameter, in: 0.3125 for 5/16. */
  readonly diameterIn: number;
  /** Thread in the wood, without the tip, in. */
  readonly threadInWoodIn: number;
  /** Specific gravity: 0.42 spruce-pine-fir, 0.50 Douglas fir, 0.55 southern pine. */
  readonly specificGravity: number;
  /** CD: 1.6 for wind. */
  readonly durationFactor?: number;
  /** Wet service, heat and the like together. Default 1: dry and below 100 °F. */
  readonly otherFactors?: number;
}

const N_PER_LBF = 4.4482216152605;

/** Withdrawal of a lag screw by the NDS (from memory), allowable: W = 1800·G^1.5·D^0.75 lb per inch of thread. */
export function ndsLagWithdrawal(input: NdsLagInput): Force<'allowable'> & { readonly lbPerInch: number } {
  const d = within(input.diameterIn, 0.25, 1.25, 'diameterIn', 'Lag screws are ¼ in and more.');
  const bite = within(input.threadInWoodIn, 0.1, 20, 'threadInWoodIn', 'Thread in the rafter, tip not counted.');
  const g = within(input.specificGravity, 0.3, 0.75, 'specificGravity', 'By species; unknown wood: ask.');
  const cd = within(input.durationFactor ?? 1.6, 0.9, 2, 'durationFactor', '1.6 for wind, 1.15 for snow.');
  const other = within(input.otherFactors ?? 1, 0.3, 1, 'otherFactors', '1 when dry.');
  const lbPerInch = 1800 * g ** 1.5 * d ** 0.75;
  return { newtons: lbPerInch * bite * cd * other * N_PER_LBF, level: 'allowable', lbPerInch };
}
