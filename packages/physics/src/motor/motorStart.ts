import { positive, Refusal, within } from '../refusal.ts';

/** Locked-rotor kVA per horsepower by code letter: lowest and highest. NEC 430.7(B) (F to L seen, rest from memory). */
const CODE_LETTER_KVA_PER_HP: Readonly<Record<string, readonly [number, number]>> = {
  A: [0, 3.14],
  B: [3.15, 3.54],
  C: [3.55, 3.99],
  D: [4, 4.49],
  E: [4.5, 4.99],
  F: [5, 5.59],
  G: [5.6, 6.29],
  H: [6.3, 7.09],
  J: [7.1, 7.99],
  K: [8, 8.99],
  L: [9, 9.99],
  M: [10, 11.19],
  N: [11.2, 12.49],
  P: [12.5, 13.99],
  R: [14, 15.99],
  S: [16, 17.99],
  T: [18, 19.99],
  U: [20, 22.39],
};

export interface LockedRotorInput {
  /** From the nameplate, A. Goes before the code letter. */
  readonly lockedRotorA?: number;
  readonly codeLetter?: string;
  readonly horsepower?: number;
  readonly ratedV: number;
  readonly phases: 1 | 3;
}

export interface LockedRotor {
  readonly lockedRotorA: number;
  readonly startKva: number;
  readonly by: 'nameplate' | 'code letter';
}

/**
 * Apparent power and current of a motor with its rotor at rest.
 *
 *     kVA = LRA·V/1000 (·√3 in three-phase), or kVA/hp of the code letter, its upper end, times horsepower
 *
 * @throws {Refusal} `missing` when neither is known: running watts say nothing about a start.
 *
 * Source: NEC 430.7(B).
 */
export function lockedRotor(input: LockedRotorInput): LockedRotor {
  const root = input.phases === 3 ? Math.sqrt(3) : 1;
  const kvPerA = (root * positive(input.ratedV, 'ratedV', 'Read it from the nameplate.')) / 1000;
  if (input.lockedRotorA !== undefined) {
    const lockedRotorA = positive(input.lockedRotorA, 'lockedRotorA', 'Read LRA from the nameplate.');
    return { lockedRotorA, startKva: lockedRotorA * kvPerA, by: 'nameplate' };
  }
  const range = CODE_LETTER_KVA_PER_HP[(input.codeLetter ?? '').toUpperCase()];
  if (!range || input.horsepower === undefined) {
    throw new Refusal({
      code: 'missing',
      at: 'lockedRotorA',
      got: input.codeLetter,
      want: 'a locked-rotor current, or a code letter A to U with horsepower',
      mend: 'Read the nameplate, or record a start with a clamp; running watts are not enough.',
    });
  }
  const startKva = range[1] * positive(input.horsepower, 'horsepower', 'Read it from the nameplate.');
  return { lockedRotorA: startKva / kvPerA, startKva, by: 'code letter' };
}

export type MotorKind = 'pump' | 'compressor' | 'fan';

/** Share of simulated motors that start, %, for k from 0.3 up in tenths. 12,000 random motors, loads and limits. */
const STARTED_PERCENT: Readonly<Record<MotorKind, readonly number[]>> = {
  pump: [2, 14, 56, 85, 99, 100],
  compressor: [0, 3, 33, 75, 97, 100],
  fan: [0, 0, 12, 53, 90, 100],
};

export interface MotorStartInput {
  readonly lockedRotorA: number;
  /** Most the source gives for the length of a start, A. */
  readonly sourceLimitA: number;
  /** What else is on, A. Default 0. */
  readonly baseLoadA?: number;
  readonly kind?: MotorKind;
}

export interface MotorStart {
  /** Current left for the motor over its locked-rotor current. */
  readonly k: number;
  readonly verdict: 'starts' | 'ask' | 'will not';
  /** Lowest voltage as a share of nominal, about; good to the locked-rotor figure, ±15 %. */
  readonly lowestVoltageShare: number;
  /** Peak the source has to give, A: all of it, or its limit. */
  readonly peakA: number;
  /** Of simulated motors of this kind at this k; undefined when the kind is not known. */
  readonly startedPercent: number | undefined;
}

/**
 * Will a motor start on a source that cannot give more than its limit?
 *
 *     k = (limit − base load)/locked-rotor current;   k ≥ 0.8 starts, k < 0.4 will not, between: ask
 *
 * Currents are subtracted as numbers, which errs against the motor. In the grey band the load decides: an unloaded
 * pump starts where a piston against pressure does not. Two starts at once are never promised.
 *
 * Source: simulation of random motors with a current-limited source; no published rule.
 */
export function motorStart(input: MotorStartInput): MotorStart {
  const lockedA = positive(input.lockedRotorA, 'lockedRotorA', 'See lockedRotor.');
  const limitA = positive(input.sourceLimitA, 'sourceLimitA', 'Read the surge current from the inverter sheet.');
  const baseA = within(input.baseLoadA ?? 0, 0, 1e5, 'baseLoadA', 'Add what runs at the same time.');
  const k = Math.max(0, limitA - baseA) / lockedA;
  const row = input.kind && STARTED_PERCENT[input.kind];
  const band = Math.min(5, Math.floor((k + 1e-9) * 10) - 3);
  return {
    k,
    verdict: k >= 0.8 ? 'starts' : k < 0.4 ? 'will not' : 'ask',
    lowestVoltageShare: Math.min(1, k),
    peakA: Math.min(limitA, baseA + lockedA),
    startedPercent: row ? (band < 0 ? 0 : row[band]) : undefined,
  };
}

/**
 * Share of locked-rotor torque under a soft starter that holds the current to a multiple of full load.
 *
 *     torque = (s / locked-rotor multiple)²
 *
 * Right for pumps and equalised scrolls, useless against a loaded piston.
 */
export function softStartTorqueShare(limitMultiple: number, lockedRotorMultiple: number): number {
  const s = positive(limitMultiple, 'limitMultiple', 'The starter’s limit over full-load current.');
  const l = positive(lockedRotorMultiple, 'lockedRotorMultiple', 'Locked-rotor over full-load current, about 6.');
  return Math.min(1, s / l) ** 2;
}
