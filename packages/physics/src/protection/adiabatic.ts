import { positive, Refusal, within } from '../refusal.ts';
import { ADIABATIC_K, STANDARD_MM2 } from './data/tables.ts';

export interface Adiabatic {
  readonly minimumMm2: number;
  /** Undefined above 185 mm². */
  readonly nextStandardMm2: number | undefined;
}

/**
 * Smallest conductor that survives a fault without giving heat away.
 *
 *     S = √(I²·t)/k
 *
 * @throws {Refusal} `outside-range` when t is not 0.1 to 5 s: below it the let-through energy of the device counts
 *                   (`letThroughMm2`), above it heat escapes and the formula is too severe.
 *
 * Source: IEC 60364-5-54 clause 543.1.2.
 */
export function adiabatic(input: { faultCurrentA: number; timeS: number; k: number }): Adiabatic {
  const currentA = positive(input.faultCurrentA, 'faultCurrentA', 'Voltage over loop impedance.');
  const timeS = within(input.timeS, 0.1, 5, 'timeS', 'Below 0.1 s use the let-through energy of the device.');
  return letThroughMm2(currentA * currentA * timeS, input.k);
}

/** The same from the let-through energy of a device, A²s: S = √(I²t)/k. */
export function letThroughMm2(ampereSquaredSeconds: number, k: number): Adiabatic {
  const energy = positive(ampereSquaredSeconds, 'ampereSquaredSeconds', 'Read it from the device sheet.');
  const minimumMm2 = Math.sqrt(energy) / positive(k, 'k', 'Take it from adiabaticK.');
  return { minimumMm2, nextStandardMm2: STANDARD_MM2.find((mm2) => mm2 >= minimumMm2) };
}

/** k of a metal and its covering, A·√s/mm². */
export function adiabaticK(material: 'copper' | 'aluminium', covering: string): number {
  const row = ADIABATIC_K.find(([metal, name]) => metal === material && name === covering);
  if (!row) {
    throw new Refusal({
      code: 'unknown-name',
      at: 'covering',
      got: `${material}, ${covering}`,
      want: ADIABATIC_K.map(([metal, name]) => `${metal} ${name}`).join('; '),
      mend: 'Choose a row, or compute k from its temperatures.',
    });
  }
  return row[4];
}

/**
 * k from the temperatures before and after the fault.
 *
 *     k = Qc·√ln(1 + (tf − ti)/(β + ti))      copper 226, 234.5; aluminium 148, 228
 */
export function kFromTemperatures(material: 'copper' | 'aluminium', initialC: number, finalC: number): number {
  within(initialC, -60, 300, 'initialC', 'Temperature of the conductor before the fault.');
  within(finalC, initialC, 500, 'finalC', 'The insulation limit in a short circuit.');
  const [qc, beta] = material === 'copper' ? [226, 234.5] : [148, 228];
  return qc * Math.sqrt(Math.log(1 + (finalC - initialC) / (beta + initialC)));
}
