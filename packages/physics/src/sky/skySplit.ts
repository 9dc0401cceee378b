import { within } from '../refusal.ts';
import { etrNormalSpencer1971 } from '../sun/extraterrestrial.ts';

const RAD = Math.PI / 180;

export interface SkySplitInput {
  /** Global horizontal, W/m². */
  readonly ghi: number;
  readonly zenithDeg: number;
  /** 1 to 366. */
  readonly dayOfYear: number;
  /** Extraterrestrial normal, W/m². Default: Spencer 1971 for the day. */
  readonly dniExtra?: number;
}

export interface SkySplit {
  /** Clearness index, 0…1. */
  readonly kt: number;
  /** dhi/ghi; undefined in the dark. */
  readonly diffuseFraction: number | undefined;
  /** Beam normal, W/m². */
  readonly dni: number;
  /** Diffuse horizontal, W/m². */
  readonly dhi: number;
}

/** Diffuse share of the global at clearness kt. Source: Erbs, Klein and Duffie 1982, Solar Energy 28(4), 293. */
export function diffuseFractionErbs1982(kt: number): number {
  if (kt <= 0.22) return 1 - 0.09 * kt;
  if (kt > 0.8) return 0.165;
  return 0.9511 + kt * (-0.1604 + kt * (4.388 + kt * (-16.638 + kt * 12.336)));
}

/**
 * Splits global horizontal irradiance into beam and diffuse by the clearness of the hour:
 *
 *     kt = ghi / (dniExtra · max(cos z, 0.065)), held in 0…1;  dhi = ghi · f(kt);  dni = (ghi − dhi)/cos z
 *
 * With the sun more than 87° from overhead everything counts as diffuse.
 *
 * @throws {Refusal} `outside-range`.
 *
 * A correlation of hourly values: right for a month (about 1 %), not for one hour under broken cloud.
 *
 * Source: Erbs, Klein and Duffie 1982, Solar Energy 28(4), 293.
 */
export function skySplitErbs1982(input: SkySplitInput): SkySplit {
  const ghi = within(input.ghi, 0, 3000, 'ghi', 'Give W/m², not below 0.');
  const zenithDeg = within(input.zenithDeg, 0, 180, 'zenithDeg', 'Give the angle from overhead in degrees.');
  const spencer = etrNormalSpencer1971(input.dayOfYear);
  const dniExtra = within(input.dniExtra ?? spencer, 1000, 2000, 'dniExtra', 'About 1320 to 1415 W/m² on Earth.');
  const cosZ = Math.cos(zenithDeg * RAD);
  const kt = Math.min(1, ghi / (dniExtra * Math.max(cosZ, 0.065)));
  if (ghi === 0) return { kt, diffuseFraction: undefined, dni: 0, dhi: 0 };
  if (zenithDeg > 87) return { kt, diffuseFraction: 1, dni: 0, dhi: ghi };
  const diffuseFraction = diffuseFractionErbs1982(kt);
  const dhi = ghi * diffuseFraction;
  return { kt, diffuseFraction, dni: (ghi - dhi) / cosZ, dhi };
}
