import { MONTH_OF_DAY, YEAR_DAYS } from './calendarYear.ts';

/** Part of the mean by which wind rises in the afternoon: nine published files have 0.10 to 0.53, the middle one 0.20. */
const AFTERNOON_PART = 0.2;
/** Middle of the hour of most wind, local standard time: 12.8 to 15.1 in the same files. */
const WINDIEST_H = 14;

/** Wind that stands where nobody measured it, m/s: nine in ten of 134 places with a figure have more, so modules are reckoned warm. */
export const WIND_UNKNOWN_MS = 2.3;

/**
 * Hourly wind from monthly means: the same day all month, a little more in the afternoon,
 *
 *     v(h) = v̄ (1 + 0.2 cos(2π(h − 14)/24))
 *
 * exact in the month. There are no gusts and no calm days: good enough to cool a module (which
 * feels the mean), useless for loads, which take their wind from the code.
 */
export function windYear(windMS: readonly number[] | undefined): Float64Array {
  const wind = new Float64Array(YEAR_DAYS * 24);
  for (let i = 0; i < wind.length; i++) {
    const mean = windMS === undefined ? WIND_UNKNOWN_MS : windMS[MONTH_OF_DAY[Math.floor(i / 24)]];
    const hour = (i % 24) + 0.5;
    wind[i] = mean * (1 + AFTERNOON_PART * Math.cos((2 * Math.PI * (hour - WINDIEST_H)) / 24));
  }
  return wind;
}
