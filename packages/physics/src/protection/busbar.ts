import { positive, Refusal, within } from '../refusal.ts';

export type NecBusbarOption = 'sum' | '120 percent opposite ends' | 'sum of breakers' | 'centre fed';

export interface NecBusbarInput {
  readonly busbarA: number;
  /** Rating of the device that protects the busbar. */
  readonly mainBreakerA: number;
  /** All sources on this busbar together, rated continuous output. */
  readonly inverterOutputCurrentA: number;
  readonly option: NecBusbarOption;
  /** For `sum of breakers`. */
  readonly sumOfAllLoadAndSourceBreakersExcludingMainA?: number;
}

export interface BusbarVerdict {
  readonly comparedA: number;
  readonly limitA: number;
  readonly allowed: boolean;
  /** Most inverter current this option lets in; undefined where it does not depend on it. */
  readonly largestInverterCurrentA: number | undefined;
}

/** Sums such as 1.25 × 32 + 200 must not fail by their rounding. */
const SLACK_A = 1e-9;

/**
 * NEC 705.12(B) busbar options for a load-side connection.
 *
 * | option | compared | limit |
 * |---|---|---|
 * | sum | 1.25·I + main | busbar |
 * | 120 percent opposite ends | 1.25·I + main | 1.2·busbar; source at the far end, do-not-relocate label |
 * | centre fed (dwelling, one source at one end) | 1.25·I + main | 1.2·busbar |
 * | sum of breakers | all breakers but the main | busbar; label |
 *
 * A supply-side tap (705.11) and a power control system (705.13) are other ways. Numbering moves with the edition.
 * Source: NEC 705.12(B)(3) in 2020, 705.12(B) in 2023 (first option seen in public text, wording of the rest from memory).
 */
export function necBusbar(input: NecBusbarInput): BusbarVerdict {
  const busbarA = positive(input.busbarA, 'busbarA', 'Read it from the panel label.');
  const mainA = positive(input.mainBreakerA, 'mainBreakerA', 'Read it from the main breaker.');
  const inverterA = positive(input.inverterOutputCurrentA, 'inverterOutputCurrentA', 'Sum the sources.');
  if (input.option === 'sum of breakers') {
    const comparedA = input.sumOfAllLoadAndSourceBreakersExcludingMainA;
    if (comparedA === undefined) {
      throw new Refusal({
        code: 'missing',
        at: 'sumOfAllLoadAndSourceBreakersExcludingMainA',
        got: comparedA,
        want: 'the sum of all load and source breakers but the main',
        mend: 'Add the ratings of every breaker in the panel except the main.',
      });
    }
    within(comparedA, 0, 1e5, 'sumOfAllLoadAndSourceBreakersExcludingMainA', 'Add the ratings.');
    return { comparedA, limitA: busbarA, allowed: comparedA <= busbarA + SLACK_A, largestInverterCurrentA: undefined };
  }
  const share = { sum: 1, '120 percent opposite ends': 1.2, 'centre fed': 1.2 }[input.option];
  if (share === undefined) {
    throw new Refusal({
      code: 'unknown-name',
      at: 'option',
      got: input.option,
      want: 'sum, 120 percent opposite ends, centre fed or sum of breakers',
      mend: 'Name the option of 705.12.',
    });
  }
  const comparedA = 1.25 * inverterA + mainA;
  const limitA = share * busbarA;
  return {
    comparedA,
    limitA,
    allowed: comparedA <= limitA + SLACK_A,
    largestInverterCurrentA: Math.max(0, (limitA - mainA) / 1.25),
  };
}

/**
 * Boards elsewhere: bars fed by the network's fuse and by generation are rated for both together.
 * Source: BS 7671 551.7 (from memory).
 */
export function sumOfSources(busRatingA: number, sourcesA: readonly number[]): BusbarVerdict {
  const limitA = positive(busRatingA, 'busRatingA', 'Read it from the board.');
  const comparedA = sourcesA.reduce(
    (sum, a, i) => sum + within(a, 0, 1e5, `sourcesA[${i}]`, 'Rating of its device.'),
    0,
  );
  return { comparedA, limitA, allowed: comparedA <= limitA + SLACK_A, largestInverterCurrentA: undefined };
}
