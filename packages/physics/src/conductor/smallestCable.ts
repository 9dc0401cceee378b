import { positive } from '../refusal.ts';
import { type IecCapacityInput, iecCableCapacity } from './capacity.ts';
import { INSULATION_LIMIT_C } from './data/iec60228.ts';
import { IEC_CAPACITY_SIZES_MM2 } from './data/iecCapacity.ts';
import { ohmPerKm } from './resistance.ts';

export interface CableChoiceInput extends Omit<IecCapacityInput, 'sizeMm2' | 'conductor'> {
  /** Design current, A. */
  readonly currentA: number;
  /** Rating of the device that protects the cable, A. */
  readonly breakerA: number;
  readonly routeLengthM: number;
  /** Largest allowed drop or rise over this run, % of nominal. */
  readonly limitPercent: number;
  /** Line to neutral for one phase, line to line for three. */
  readonly nominalV: number;
  readonly phases: 1 | 3;
  /** Temperature the volts are judged at. Left out: the limit of the insulation. */
  readonly conductorTemperatureC?: number;
  /** Class 2 unless said; a trunk of class 5 reads about 8 % more. */
  readonly class?: 1 | 2 | 5;
  /** Sizes on the van. Left out: all of the table. */
  readonly sizesMm2?: readonly number[];
}

export interface CableCandidate {
  readonly sizeMm2: number;
  readonly izA: number;
  readonly dropOrRiseV: number;
  readonly percent: number;
  readonly accepted: boolean;
  /** Why not: too little capacity, too many volts, or both. Empty when accepted. */
  readonly failed: readonly ('capacity' | 'volts')[];
}

export interface CableChoice {
  /** From the smallest size up to the first that passes both, or all when none does. */
  readonly candidates: readonly CableCandidate[];
  readonly chooseMm2: number | undefined;
  /** Whether the device covers the current at all: Ib ≤ In. */
  readonly breakerCoversCurrent: boolean;
}

/**
 * The smallest copper cable that carries the breaker's rating and keeps the volts, and why each smaller one failed.
 *
 *     Iz ≥ In,   k·I·L·r(T) ≤ limit     k = 2 for one phase, √3 for three
 *
 * Reactance is left out: below 16 mm² at unity power factor it does not show. A breaker to IEC 60898 has
 * I2 = 1.45 In, so In ≤ Iz is enough for overload (IEC 60364-4-43, from memory).
 *
 * @throws {Refusal} `not-positive` and what `iecCableCapacity` refuses.
 */
export function smallestCable(input: CableChoiceInput): CableChoice {
  const currentA = positive(input.currentA, 'currentA', 'Give the design current.');
  const breakerA = positive(input.breakerA, 'breakerA', 'Give the rating of the device.');
  const limitPercent = positive(input.limitPercent, 'limitPercent', 'Give the share of the limit left for this run.');
  positive(input.routeLengthM, 'routeLengthM', 'Measure along the cable.');
  positive(input.nominalV, 'nominalV', 'Give the nominal voltage.');

  const candidates: CableCandidate[] = [];
  for (const sizeMm2 of input.sizesMm2 ?? IEC_CAPACITY_SIZES_MM2) {
    const candidate = judge(input, sizeMm2, breakerA, currentA, limitPercent);
    candidates.push(candidate);
    if (candidate.accepted) break;
  }
  return {
    candidates,
    chooseMm2: candidates.find((c) => c.accepted)?.sizeMm2,
    breakerCoversCurrent: currentA <= breakerA,
  };
}

function judge(
  input: CableChoiceInput,
  sizeMm2: number,
  breakerA: number,
  currentA: number,
  limitPercent: number,
): CableCandidate {
  const { capacityA: izA } = iecCableCapacity({ ...input, conductor: 'copper', sizeMm2 });
  const temperatureC = input.conductorTemperatureC ?? INSULATION_LIMIT_C[input.insulation];
  const rOhmPerKm = ohmPerKm(
    { standard: 'IEC 60228', class: input.class ?? 2, material: 'copper', sizeMm2 },
    temperatureC,
  );
  const k = input.phases === 3 ? Math.sqrt(3) : 2;
  const dropOrRiseV = (k * currentA * input.routeLengthM * rOhmPerKm) / 1000;
  const percent = (100 * dropOrRiseV) / input.nominalV;
  const failed: ('capacity' | 'volts')[] = [];
  if (izA < breakerA) failed.push('capacity');
  if (percent > limitPercent) failed.push('volts');
  return { sizeMm2, izA, dropOrRiseV, percent, accepted: failed.length === 0, failed };
}
