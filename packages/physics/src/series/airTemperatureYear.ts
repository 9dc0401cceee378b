import { MONTH_DAYS, MONTH_OF_DAY, MONTH_STARTS, YEAR_DAYS } from './calendarYear.ts';
import type { MonthlyNormals } from './monthlyNormals.ts';
import type { SeededRandom } from './seededRandom.ts';

/** Memory of warm and cold spells from one day to the next: nearest to published files. */
const SPELL_MEMORY = 0.65;

/** How strongly a clear day swings wider than a dull one: 0.6 to 0.9 in published files, kept low for safety. */
const SWING_BY_CLEARNESS = 0.5;

/**
 * Hourly air temperature whose monthly means are exactly the ones given, °C.
 *
 * Means of days run along straight lines from mid-month to mid-month, with ends moved until each
 * month's mean is right; spells of warm and cold days ride on them, with a deviation of
 * 1.2 K + 0.13 of the yearly range of means, at most 4.6 K; within the day the curve
 *
 *     T − T̄ = A [0.4632 cos(τ − 3.805) + 0.0984 cos(2τ − 0.360) + 0.0168 cos(3τ − 0.822) + 0.0138 cos(4τ − 3.513)]
 *
 * with τ = 2π(h − 1)/24 for hour h = 1…24 and A = (Tmax − Tmin)(1 + 0.5 (K/K̄ − 1)): clear days swing
 * wider. A shift per month takes out what chance left.
 *
 * Extremes are not promised: the coldest hours may be off by 8 K. Record lows come from records.
 * Source: Erbs, Klein and Beckman 1983, ASHRAE Journal (June), 60 (coefficients from memory).
 */
export function airTemperatureYear(
  { meanC, dayMaxC, dayMinC }: Pick<MonthlyNormals, 'meanC' | 'dayMaxC' | 'dayMinC'>,
  dayK: Float64Array,
  monthK: readonly number[],
  random: SeededRandom,
): Float64Array {
  const airC = new Float64Array(YEAR_DAYS * 24);
  const means = daysFromMonths(meanC);
  const range = Math.max(...meanC) - Math.min(...meanC);
  const deviationK = Math.min(4.6, 1.2 + 0.13 * range);
  const fresh = Math.sqrt(1 - SPELL_MEMORY * SPELL_MEMORY);
  const curve = Float64Array.from({ length: 24 }, (_, h) => dayCurve(h + 1));
  let spell = random.gaussian();
  for (let d = 0; d < YEAR_DAYS; d++) {
    const m = MONTH_OF_DAY[d];
    spell = SPELL_MEMORY * spell + fresh * random.gaussian();
    const clearer = monthK[m] > 0 ? dayK[d] / monthK[m] - 1 : 0;
    const swingK = (dayMaxC[m] - dayMinC[m]) * (1 + SWING_BY_CLEARNESS * clearer);
    for (let h = 0; h < 24; h++) airC[d * 24 + h] = means[d] + deviationK * spell + swingK * curve[h];
  }
  for (let m = 0; m < 12; m++) shiftToMean(airC, MONTH_STARTS[m] * 24, MONTH_STARTS[m + 1] * 24, meanC[m]);
  return airC;
}

/** Departure of hour h (1 to 24, ending there) from the day's mean, as a part of the day's swing. Sums to 0. */
export function dayCurve(h: number): number {
  const tau = (2 * Math.PI * (h - 1)) / 24;
  return (
    0.4632 * Math.cos(tau - 3.805) +
    0.0984 * Math.cos(2 * tau - 0.36) +
    0.0168 * Math.cos(3 * tau - 0.822) +
    0.0138 * Math.cos(4 * tau - 3.513)
  );
}

/**
 * A value a day on straight lines between the middles of months, the year closed to a ring, such
 * that the mean over each month is the one given (to 1e-12 of the yearly range).
 */
export function daysFromMonths(monthMeans: readonly number[]): Float64Array {
  const anchors = Float64Array.from(monthMeans);
  const days = new Float64Array(YEAR_DAYS);
  for (let pass = 0; pass < 60; pass++) {
    layLines(anchors, days);
    let worst = 0;
    for (let m = 0; m < 12; m++) {
      let sum = 0;
      for (let d = MONTH_STARTS[m]; d < MONTH_STARTS[m + 1]; d++) sum += days[d];
      const miss = monthMeans[m] - sum / MONTH_DAYS[m];
      anchors[m] += miss;
      worst = Math.max(worst, Math.abs(miss));
    }
    if (worst < 1e-12) break;
  }
  layLines(anchors, days);
  return days;
}

function layLines(anchors: Float64Array, days: Float64Array): void {
  for (let d = 0; d < YEAR_DAYS; d++) {
    const m = MONTH_OF_DAY[d];
    const past = d + 0.5 - (MONTH_STARTS[m] + MONTH_DAYS[m] / 2);
    const other = (m + (past < 0 ? 11 : 1)) % 12;
    const share = Math.abs(past) / ((MONTH_DAYS[m] + MONTH_DAYS[other]) / 2);
    days[d] = anchors[m] + share * (anchors[other] - anchors[m]);
  }
}

function shiftToMean(values: Float64Array, from: number, to: number, mean: number): void {
  // twice: the second pass takes out the rounding of the first
  for (let pass = 0; pass < 2; pass++) {
    let sum = 0;
    for (let i = from; i < to; i++) sum += values[i];
    const miss = mean - sum / (to - from);
    for (let i = from; i < to; i++) values[i] += miss;
  }
}
