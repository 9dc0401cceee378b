import { Refusal } from '../refusal.ts';
import { MONTH_DAYS, MONTH_STARTS } from './calendarYear.ts';
import { dayClearness, nextDay, normalShare } from './dayClearness.ts';
import { hourClearness } from './hourClearness.ts';
import { MONTH_CLEARNESS } from './monthlyNormals.ts';
import type { SeededRandom } from './seededRandom.ts';
import { squashToSum } from './squashToSum.ts';

/** A year of hours as the sun and a cloudless sky give it: 8760 values each, 0 while the sun is down. */
export interface ClearYear {
  /** Horizontal outside the air, W/m². */
  readonly outside: Float64Array;
  /** Global horizontal under a clear sky, W/m². */
  readonly clear: Float64Array;
  /** Sine of the sun's height. */
  readonly sinElevation: Float64Array;
}

/** Global radiation of a made year. */
export interface RadiationYear {
  /** W/m², 8760 hours. */
  readonly ghi: Float64Array;
  /** Nothing is above this, W/m². */
  readonly ceiling: Float64Array;
  /** Clearness of each day; 0 in polar night. */
  readonly dayK: Float64Array;
  /** Clearness of each month. */
  readonly monthK: readonly number[];
  /** Months, January 0, that were cut to the clearness there is. */
  readonly cutMonths: readonly number[];
}

/** Sum of an array over the hours of some days. */
function overDays(array: Float64Array, firstDay: number, lastDay: number): number {
  let sum = 0;
  for (let i = firstDay * 24; i < lastDay * 24; i++) sum += array[i];
  return sum;
}

/**
 * Hours of global radiation whose monthly means are exactly the ones given.
 *
 * Days: a chain draws each day's clearness from the month's distribution. Hours: a second chain
 * within the day. Both are bent (`squashToSum`) to the month's and the day's total below a ceiling
 * of 1.04 clear sky, higher where the month itself is clearer than that.
 *
 * @param beyond  What becomes of a month whose clearness is not 0.10 to 0.85: refused, or cut to the nearer of the two.
 * @throws {Refusal} `outside-range` for such a month where it is refused.
 */
export function radiationYear(
  ghiKwhM2Day: readonly number[],
  year: ClearYear,
  random: SeededRandom,
  beyond: 'refuse' | 'cut' = 'refuse',
): RadiationYear {
  const hours = year.outside.length;
  const [ghi, ceiling] = [new Float64Array(hours), new Float64Array(hours)];
  const dayK = new Float64Array(hours / 24);
  const monthK: number[] = [];
  const cutMonths: number[] = [];
  let chi = random.gaussian();
  for (let m = 0; m < 12; m++) {
    const [first, last] = [MONTH_STARTS[m], MONTH_STARTS[m + 1]];
    const outside = overDays(year.outside, first, last);
    const given = ghiKwhM2Day[m] * 1000 * MONTH_DAYS[m];
    const meanK = beyond === 'cut' ? nearestClearness(given, outside) : monthClearness(given, outside, m);
    const cut = !isPossible(given, outside);
    if (cut) cutMonths.push(m);
    const target = cut ? meanK * outside : given;
    monthK.push(meanK);
    if (meanK === 0) continue;
    const clearK = overDays(year.clear, first, last) / outside;
    const upper = Math.max(1.04 * clearK, 1.03 * meanK + 0.01);
    const lift = upper / clearK;
    for (let i = first * 24; i < last * 24; i++) ceiling[i] = lift * year.clear[i];
    chi = drawDays(dayK, year.outside, ceiling, first, last, { meanK, upper, target }, chi, random);
    for (let d = first; d < last; d++) drawHours(ghi, d, dayK[d], year, ceiling, random);
  }
  return { ghi, ceiling, dayK, monthK, cutMonths };
}

function isPossible(target: number, outside: number): boolean {
  if (target === 0) return true;
  return outside > 0 && target / outside >= MONTH_CLEARNESS.least && target / outside <= MONTH_CLEARNESS.most;
}

/** Clearness of a month, brought between the least and the most there is; 0 in a month without sun. */
function nearestClearness(target: number, outside: number): number {
  if (outside === 0 || target === 0) return 0;
  return Math.min(MONTH_CLEARNESS.most, Math.max(MONTH_CLEARNESS.least, target / outside));
}

function monthClearness(target: number, outside: number, month: number): number {
  if (target === 0) return 0;
  const { least, most } = MONTH_CLEARNESS;
  if (isPossible(target, outside)) return target / outside;
  throw new Refusal({
    code: 'outside-range',
    at: `ghiKwhM2Day[${month}]`,
    got: target / 1000 / MONTH_DAYS[month],
    want: `${least} to ${most} of what the sun gives outside the air, ${(outside / 1000 / MONTH_DAYS[month]).toFixed(2)} kWh/m² a day`,
    mend: 'Check the unit (a mean day, not a month), the place and the month.',
  });
}

/** Fills the days' clearness of one month; returns the chain's last value. */
function drawDays(
  dayK: Float64Array,
  outside: Float64Array,
  ceiling: Float64Array,
  first: number,
  last: number,
  month: { readonly meanK: number; readonly upper: number; readonly target: number },
  chiBefore: number,
  random: SeededRandom,
): number {
  const shape = dayClearness(month.meanK, month.upper);
  const [totals, limits] = [new Float64Array(last - first), new Float64Array(last - first)];
  let chi = chiBefore;
  for (let d = first; d < last; d++) {
    chi = nextDay(chi, random.gaussian);
    const dayOutside = overDays(outside, d, d + 1);
    // a hair under the clear day, so that every hour keeps room
    limits[d - first] = 0.999 * overDays(ceiling, d, d + 1);
    totals[d - first] = Math.min(shape.quantile(normalShare(chi)) * dayOutside, 0.995 * limits[d - first]);
  }
  squashToSum(totals, limits, 0, totals.length, month.target);
  for (let d = first; d < last; d++) {
    const dayOutside = overDays(outside, d, d + 1);
    dayK[d] = dayOutside > 0 ? totals[d - first] / dayOutside : 0;
  }
  return chi;
}

/** Fills the hours of one day, summing to its clearness times what arrives outside the air. */
function drawHours(
  ghi: Float64Array,
  day: number,
  k: number,
  year: ClearYear,
  ceiling: Float64Array,
  random: SeededRandom,
): void {
  const [from, to] = [day * 24, day * 24 + 24];
  hourClearness(k, year.sinElevation, from, to, random.gaussian, ghi);
  for (let i = from; i < to; i++) ghi[i] = Math.min(ghi[i] * year.outside[i], 0.98 * ceiling[i]);
  squashToSum(ghi, ceiling, from, to, k * overDays(year.outside, day, day + 1));
}
