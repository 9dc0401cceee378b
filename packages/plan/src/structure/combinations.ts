import { asceSnow, enSnow, fixingDown, fixingUplift, type LoadCode } from '@eaveline/physics';
import type { WindMethod } from './sitePressure.ts';
import type { LoadLevel } from './types.ts';

export const CODE: Readonly<Record<WindMethod, LoadCode>> = {
  'AS/NZS 1170.2': 'AS/NZS',
  'EN 1991-1-4': 'EN',
  'ASCE 7': 'ASD',
};

/** Standard gravity as the loads use it, m/s². */
export const GRAVITY = 9.81;

/** How wind and weight combine against uplift. */
export interface UpliftFactors {
  readonly wind: number;
  /** On the weight, its lean to the normal of the roof included. */
  readonly weight: number;
  readonly level: LoadLevel;
  readonly combination: string;
}

/** Factors of a code's uplift combination on a slope, taken from one square metre under one pascal and one kilogram. */
export function upliftFactors(code: LoadCode, slopeDeg: number): UpliftFactors {
  const one = fixingUplift({ code, pressurePa: 1, netCoefficient: -1, areaM2: 1, weightKgPerM2: 1, slopeDeg });
  return {
    wind: one.factoredWindN / one.windN,
    weight: one.heldN / one.weightN,
    level: one.uplift.level,
    combination: one.combination,
  };
}

/** Snow along the roof's normal on the slope, Pa; undefined where none is given or the method has no formula here. */
export function snowPa(method: WindMethod, groundKPa: number | undefined, slopeDeg: number): number | undefined {
  if (groundKPa === undefined || method === 'AS/NZS 1170.2') return undefined;
  const snow = method === 'ASCE 7' ? asceSnow({ groundKPa, slopeDeg }) : enSnow({ groundKPa, slopeDeg });
  return 1000 * snow.normalKPa;
}

/** What presses on the roof, unfactored, along its normal. */
export interface DownPressures {
  readonly windPa: number;
  readonly snowPa: number;
}

/** The worst downward combination on a surface and a mass, N. A pried foot counts as unloaded. */
export function downN(
  code: LoadCode,
  { windPa, snowPa: snow }: DownPressures,
  slopeDeg: number,
  areaM2: number,
  massKg: number,
): number {
  const cos = Math.cos((slopeDeg * Math.PI) / 180);
  const area = Math.max(0, areaM2);
  // sums of forces go with their unit: in kilonewtons a rail that hangs far out of its feet is no refusal, but a finding
  return (
    1000 *
    fixingDown({
      code,
      weightN: (Math.max(0, massKg) * GRAVITY * cos) / 1000,
      windN: (windPa * area) / 1000,
      snowN: (snow * area) / 1000,
    }).down.newtons
  );
}
