import { neutralCurrentA } from '../network/fourWire.ts';
import { positive, Refusal, within } from '../refusal.ts';

export interface PhaseBalanceInput {
  /** Units on A, B and C. */
  readonly moduleInvertersOnABC: readonly number[];
  readonly ratingVaEach: number;
  /** Largest allowed difference between two phases. */
  readonly limitVa: number;
  /** Default 230 V. */
  readonly phaseV?: number;
}

export interface PhaseBalance {
  readonly phaseVa: readonly number[];
  readonly largestDifferenceVa: number;
  readonly allowed: boolean;
  readonly phaseCurrentA: readonly number[];
  /** At full output, unity power factor, no load. */
  readonly neutralCurrentA: number;
}

/** Apparent power on each phase, the largest difference against its limit, and what the neutral carries. */
export function phaseBalance(input: PhaseBalanceInput): PhaseBalance {
  const { moduleInvertersOnABC: counts } = input;
  if (counts.length !== 3) {
    throw new Refusal({
      code: 'length-mismatch',
      at: 'moduleInvertersOnABC',
      got: counts.length,
      want: '3 counts',
      mend: 'Give 0 for a phase without units.',
    });
  }
  const each = positive(input.ratingVaEach, 'ratingVaEach', 'Read it from the unit sheet.');
  const limitVa = within(input.limitVa, 0, 1e9, 'limitVa', 'Ask the network.');
  const phaseV = positive(input.phaseV ?? 230, 'phaseV', 'Give the phase voltage.');
  const phaseVa = counts.map((n, i) => within(n, 0, 1e6, `moduleInvertersOnABC[${i}]`, 'Count the units.') * each);
  const largestDifferenceVa = Math.max(...phaseVa) - Math.min(...phaseVa);
  const phaseCurrentA = phaseVa.map((va) => va / phaseV);
  return {
    phaseVa,
    largestDifferenceVa,
    allowed: largestDifferenceVa <= limitVa,
    phaseCurrentA,
    neutralCurrentA: neutralCurrentA(phaseCurrentA[0], phaseCurrentA[1], phaseCurrentA[2]),
  };
}

/** Units dealt in turn to A, B, C: counts differ by at most one. */
export function dealtInTurn(units: number): readonly [number, number, number] {
  const n = within(units, 0, 1e6, 'units', 'Count the units.');
  return [Math.ceil(n / 3), Math.ceil((n - 1) / 3), Math.ceil((n - 2) / 3)].map((k) =>
    Math.max(0, k),
  ) as unknown as readonly [number, number, number];
}

/** Neutral of a split-phase service, A: the difference of its legs. Line-to-line units put nothing in it. */
export function splitPhaseNeutralA(leg1A: number, leg2A: number): number {
  return Math.abs(
    within(leg1A, -1e5, 1e5, 'leg1A', 'Export negative.') - within(leg2A, -1e5, 1e5, 'leg2A', 'Export negative.'),
  );
}
