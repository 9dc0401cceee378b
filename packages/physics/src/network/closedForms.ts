import { finite, positive, Refusal, within } from '../refusal.ts';

/** Drop or rise of one run: volts and per cent of nominal. */
export interface VoltageChange {
  readonly volts: number;
  readonly percent: number;
}

export interface TwoWireInput {
  readonly currentA: number;
  /** cos φ, 0 to 1; lagging unless `leading`. Default 1. */
  readonly powerFactor?: number;
  readonly leading?: boolean;
  readonly lengthM: number;
  /** One conductor at service temperature. */
  readonly rOhmPerKm: number;
  readonly xOhmPerKm?: number;
  readonly nominalV: number;
}

/** R·cos φ + X·sin φ of one conductor, Ω/km. */
function effectiveOhmPerKm(input: Omit<TwoWireInput, 'nominalV' | 'currentA' | 'lengthM'>): number {
  const cos = within(input.powerFactor ?? 1, 0, 1, 'powerFactor', 'Give cos φ between 0 and 1.');
  const sin = Math.sqrt(1 - cos * cos) * (input.leading ? -1 : 1);
  const r = within(input.rOhmPerKm, 0, 1e6, 'rOhmPerKm', 'Give the resistance of one conductor per kilometre.');
  return r * cos + finite(input.xOhmPerKm ?? 0, 'xOhmPerKm') * sin;
}

function changeOver(k: number, input: Omit<TwoWireInput, 'nominalV'>, nominalV: number): VoltageChange {
  finite(input.currentA, 'currentA');
  positive(input.lengthM, 'lengthM', 'Measure along the cable.');
  positive(nominalV, 'nominalV', 'Give the nominal voltage.');
  const volts = (k * input.currentA * input.lengthM * effectiveOhmPerKm(input)) / 1000;
  return { volts, percent: (100 * volts) / nominalV };
}

/**
 * Drop (load) or rise (export) over a two-wire run, the magnitude approximated along the current.
 *
 *     ΔV = 2·I·L·(R·cos φ + X·sin φ)
 *
 * Holds while the angle between the ends is small, as it is in any house.
 * @throws {Refusal} `not-finite`, `not-positive`, `outside-range`.
 */
export function twoWireChange(input: TwoWireInput): VoltageChange {
  return changeOver(2, input, input.nominalV);
}

export interface ThreePhaseInput extends Omit<TwoWireInput, 'currentA' | 'nominalV'> {
  readonly lineCurrentA: number;
  readonly nominalLineV: number;
}

/** The same, balanced three-phase, line to line: ΔV = √3·I·L·(R·cos φ + X·sin φ). */
export function threePhaseChange(input: ThreePhaseInput): { voltsLineToLine: number; percent: number } {
  const { volts, percent } = changeOver(Math.sqrt(3), { ...input, currentA: input.lineCurrentA }, input.nominalLineV);
  return { voltsLineToLine: volts, percent };
}

/** Drop from a table's mV per ampere and metre: V = mV·I·L/1000. */
export function millivoltChange(input: {
  readonly mvPerAM: number;
  readonly currentA: number;
  readonly lengthM: number;
  readonly nominalV?: number;
}): { volts: number; percent: number | undefined } {
  const mv = positive(input.mvPerAM, 'mvPerAM', 'Read it from the cable table.');
  const lengthM = positive(input.lengthM, 'lengthM', 'Measure along the cable.');
  const volts = (mv * finite(input.currentA, 'currentA') * lengthM) / 1000;
  if (input.nominalV === undefined) return { volts, percent: undefined };
  return { volts, percent: (100 * volts) / positive(input.nominalV, 'nominalV', 'Give the nominal voltage.') };
}

/**
 * Longest route that keeps the limit for a single-phase source at its rated power.
 *
 *     I = S/V,  L = limit·V / (2·r·I)
 */
export function longestRoute(input: {
  readonly ratedVa: number;
  readonly nominalV: number;
  /** One conductor at service temperature. */
  readonly rOhmPerKm: number;
  readonly limitPercent: number;
}): { currentA: number; mvPerAM: number; limitV: number; longestRouteM: number } {
  const nominalV = positive(input.nominalV, 'nominalV', 'Give the nominal voltage.');
  const currentA = positive(input.ratedVa, 'ratedVa', 'Give the rated apparent power.') / nominalV;
  const mvPerAM = 2 * positive(input.rOhmPerKm, 'rOhmPerKm', 'Give the resistance of one conductor.');
  const limitV = (positive(input.limitPercent, 'limitPercent', 'Give the limit in per cent.') / 100) * nominalV;
  return { currentA, mvPerAM, limitV, longestRouteM: (limitV * 1000) / (mvPerAM * currentA) };
}

/**
 * Terminal voltage of one source at the end of an impedance, exactly.
 *
 *     |V|² = h + √(h² − |S|²·|Z|²),   h = V0²/2 + P·R + Q·X     (P, Q injected, Z the loop)
 *
 * @throws {Refusal} `no-solution` past the point of collapse.
 */
export function oneSourceTerminalV(input: {
  readonly sourceV: number;
  readonly pW: number;
  readonly qVar?: number;
  /** Loop, out and back. */
  readonly loopROhm: number;
  readonly loopXOhm?: number;
}): number {
  const v0 = positive(input.sourceV, 'sourceV', 'Give the source voltage.');
  const p = finite(input.pW, 'pW');
  const q = finite(input.qVar ?? 0, 'qVar');
  const r = within(input.loopROhm, 0, 1e6, 'loopROhm', 'Give the loop resistance.');
  const x = finite(input.loopXOhm ?? 0, 'loopXOhm');
  const h = (v0 * v0) / 2 + p * r + q * x;
  const inside = h * h - (p * p + q * q) * (r * r + x * x);
  if (inside < 0 || h <= 0) {
    throw new Refusal({
      code: 'no-solution',
      at: 'pW',
      got: p,
      want: 'a power the impedance can carry',
      mend: 'Lower the power or shorten the run: no steady voltage exists.',
    });
  }
  return Math.sqrt(h + Math.sqrt(inside));
}
