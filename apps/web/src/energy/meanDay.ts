import type { EnergyPlan } from '@eaveline/plan';

/** A mean day of one month on the clock of the place: W in each of its 24 hours. */
export interface MeanDay {
  readonly sunW: readonly number[];
  /** Undefined where what the house uses is not known. */
  readonly houseW?: readonly number[];
}

/**
 * The mean day of a month, 0 for January. The plan keeps the sun by standard time and the house by its clock; here
 * both stand on the clock, so many hours ahead.
 */
export function meanDay(
  { meanDayW, loads }: Pick<EnergyPlan, 'meanDayW' | 'loads'>,
  month: number,
  aheadH: number,
): MeanDay {
  const standard = meanDayW[month] ?? [];
  const sunW = Array.from({ length: 24 }, (_, h) => standard[(h - Math.round(aheadH) + 24) % 24] ?? 0);
  return loads.hourlyW === undefined ? { sunW } : { sunW, houseW: loads.hourlyW };
}

const kwh = (watts: readonly number[]) => watts.reduce((sum, w) => sum + w, 0) / 1000;

/** kWh of the day: made, used, and made while used. The last is of mean hours, and so the most it can be. */
export function dayKwh({ sunW, houseW }: MeanDay): {
  readonly made: number;
  readonly used?: number;
  readonly atOnce?: number;
} {
  if (houseW === undefined) return { made: kwh(sunW) };
  const atOnce = kwh(sunW.map((w, h) => Math.min(w, houseW[h] ?? 0)));
  return { made: kwh(sunW), used: kwh(houseW), atOnce };
}

/** The month that makes most, 0 for January. */
export function bestMonth(monthlyKwh: readonly number[]): number {
  return monthlyKwh.indexOf(Math.max(...monthlyKwh));
}
