import { positive, within } from '../refusal.ts';
import { finishOf, place, seeded } from './place.ts';
import { findSchedule, type ScheduleInput } from './schedule.ts';
import type { Hours } from './task.ts';

export interface ChanceInput extends ScheduleInput {
  /** Simulated jobs. Default 2000. */
  readonly samples?: number;
  /** Shared by all tasks of a simulated job: weather, crew, house. Default 0.9, 1, 1.2: common practice, no source. */
  readonly dayFactor?: Hours;
  /** Keep tasks inside days of this length. Left out: one stretch of working time. */
  readonly hoursPerDay?: number;
}

export interface Chance {
  /** Finish times, h of working time, rising. */
  readonly finishH: Float64Array;
  readonly meanH: number;
  /** 10, 50 and 90 % are done by these. */
  readonly p10H: number;
  readonly p50H: number;
  readonly p90H: number;
}

/** Inverse of the triangular distribution at a share u of chance. */
export function triangular({ low, likely, high }: Hours, u: number): number {
  const span = high - low;
  if (span === 0) return likely;
  const cut = (likely - low) / span;
  return u < cut ? low + Math.sqrt(u * span * (likely - low)) : high - Math.sqrt((1 - u) * span * (high - likely));
}

/**
 * How long the job may take: every task's hours drawn between low and high, all of one job times one shared factor,
 * and the best order found for the likely hours replayed.
 *
 * Nobody re-plans during the simulated job, which errs on the late side. The same seed gives the same figures, so
 * two crews compared share their luck.
 *
 * @throws {Refusal} what `scheduleTasks` refuses.
 */
export function finishChance(input: ChanceInput): Chance {
  const samples = within(input.samples ?? 2000, 1, 100_000, 'samples', 'A few thousand are enough.');
  const factor = input.dayFactor ?? { low: 0.9, likely: 1, high: 1.2 };
  within(
    factor.likely,
    positive(factor.low, 'dayFactor.low', 'About 0.9.'),
    factor.high,
    'dayFactor.likely',
    'Low, likely, high rise.',
  );
  if (input.hoursPerDay !== undefined) positive(input.hoursPerDay, 'hoursPerDay', 'Give the working hours of a day.');
  const { work, order } = findSchedule(input, input.hoursPerDay);
  const random = seeded((input.seed ?? 1) ^ 0x5eed);
  const hours = new Float64Array(work.ids.length);
  const finishH = new Float64Array(samples);
  for (let s = 0; s < samples; s++) {
    const day = triangular(factor, random());
    for (let i = 0; i < hours.length; i++) {
      const { low, likely, high } = work;
      hours[i] = day * triangular({ low: low[i], likely: likely[i], high: high[i] }, random());
    }
    finishH[s] = finishOf(place(work, input.crew, hours, order, input.hoursPerDay), hours);
  }
  finishH.sort();
  const at = (share: number) => finishH[Math.min(samples - 1, Math.floor(share * samples))];
  return {
    finishH,
    meanH: finishH.reduce((a, b) => a + b, 0) / samples,
    p10H: at(0.1),
    p50H: at(0.5),
    p90H: at(0.9),
  };
}

/**
 * Share of simulated jobs done by an hour, with a 95 % interval of the estimate (Wilson).
 */
export function chanceBy(chance: Chance, byH: number): { share: number; low: number; high: number } {
  const n = chance.finishH.length;
  let done = 0;
  while (done < n && chance.finishH[done] <= byH + 1e-9) done++;
  const share = done / n;
  const z2 = 1.96 ** 2;
  const mid = (share + z2 / (2 * n)) / (1 + z2 / n);
  const half = (1.96 / (1 + z2 / n)) * Math.sqrt((share * (1 - share)) / n + z2 / (4 * n * n));
  return { share, low: Math.max(0, mid - half), high: Math.min(1, mid + half) };
}
