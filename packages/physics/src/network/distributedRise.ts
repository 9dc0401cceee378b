import { positive, Refusal, within } from '../refusal.ts';
import { trunkRiseV } from './trunkRise.ts';

export interface DistributedInput {
  /** Units on the only arm, or on each arm of a trunk fed between its ends. */
  readonly moduleInverters: number | readonly number[];
  readonly powerEachW: number;
  readonly nominalV: number;
  readonly homeRunM: number;
  readonly homeRunROhmPerKm: number;
  /** Joint to the first drop of an arm, m. */
  readonly firstDropM: number;
  readonly pitchM: number;
  readonly trunkROhmPerKm: number;
}

export interface DistributedRise {
  readonly currentEachA: number;
  readonly homeRunV: number;
  readonly trunkV: number;
  readonly totalRiseV: number;
  readonly totalRisePercent: number;
  readonly profileAlongLongestArmV: readonly number[];
}

/**
 * Rise of a two-wire trunk with equal units at equal pitch.
 *
 *     home run: N·I·z·L      arm of n drops: z·I·(n·first + pitch·n(n−1)/2)      I = P/Vnominal
 *
 * z is the loop (two conductors) per metre. Fed at its centre, the trunk part falls to about a quarter.
 * Constant current, unity power factor: high by about its own percentage against constant power.
 *
 * @throws {Refusal} `missing`, `not-positive`, `outside-range`.
 */
export function distributedRise(input: DistributedInput): DistributedRise {
  const arms = typeof input.moduleInverters === 'number' ? [input.moduleInverters] : [...input.moduleInverters];
  const n = Math.max(...arms);
  if (arms.length === 0 || !arms.every((a) => Number.isInteger(a) && a >= 0) || n < 1) {
    throw new Refusal({
      code: 'missing',
      at: 'moduleInverters',
      got: input.moduleInverters,
      want: 'a whole number of units on each arm, at least one in all',
      mend: 'Count the units of each arm.',
    });
  }
  const nominalV = positive(input.nominalV, 'nominalV', 'Give the nominal voltage.');
  const currentEachA = positive(input.powerEachW, 'powerEachW', 'Give the rated power of one unit.') / nominalV;
  const total = arms.reduce((sum, a) => sum + a, 0);
  const homeRunM = within(input.homeRunM, 0, 100_000, 'homeRunM', 'Measure along the cable, 0 for none.');
  const homeRunR = positive(input.homeRunROhmPerKm, 'homeRunROhmPerKm', 'Give the resistance of one conductor.');
  const homeRunV = (2 * total * currentEachA * homeRunM * homeRunR) / 1000;

  const ohmPerM = input.trunkROhmPerKm / 1000;
  const spans = Array.from({ length: n }, (_, k) => ({ lengthM: k === 0 ? input.firstDropM : input.pitchM, ohmPerM }));
  const arm = trunkRiseV(spans, new Float64Array(n).fill(currentEachA));
  const trunkV = arm[n - 1];
  return {
    currentEachA,
    homeRunV,
    trunkV,
    totalRiseV: homeRunV + trunkV,
    totalRisePercent: (100 * (homeRunV + trunkV)) / nominalV,
    profileAlongLongestArmV: Array.from(arm, (v) => v + homeRunV),
  };
}
