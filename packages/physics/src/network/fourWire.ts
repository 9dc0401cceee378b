import { finite, positive, Refusal } from '../refusal.ts';

export interface FourWireInput {
  /** A, B, C; positive flows to a load, negative is export. */
  readonly phaseCurrentA: readonly number[];
  /** Angle of each current to its own phase voltage at the source, degrees. */
  readonly currentAngleToOwnPhaseVoltageDeg?: readonly number[];
  readonly lengthM: number;
  readonly rOhmPerKm: number;
  readonly xOhmPerKm?: number;
  readonly neutralROhmPerKm: number;
  readonly neutralXOhmPerKm?: number;
  readonly sourcePhaseV: number;
}

export interface FourWirePhase {
  readonly loadEndPhaseToNeutralV: number;
  /** Positive is a drop, negative a rise. */
  readonly dropV: number;
}

export interface FourWireChange {
  readonly neutralCurrentA: number;
  readonly neutralEndVoltageV: number;
  readonly phases: { readonly A: FourWirePhase; readonly B: FourWirePhase; readonly C: FourWirePhase };
}

const PHASE_DEG = [0, -120, 120];
const rad = (deg: number) => (deg * Math.PI) / 180;

/**
 * Drop and rise over one three-phase four-wire run with unequal, constant currents.
 *
 *     In = Ia + Ib + Ic (phasors);   V'x−n = Vx − Z·Ix − Zn·In
 *
 * Sequence A 0°, B −120°, C +120°. No mutual coupling. The neutral's share is what lifts an exporting phase
 * higher here than on a balanced trunk.
 *
 * @throws {Refusal} `length-mismatch`, `not-finite`, `not-positive`.
 */
export function fourWireChange(input: FourWireInput): FourWireChange {
  const { phaseCurrentA, currentAngleToOwnPhaseVoltageDeg: angles = [0, 0, 0] } = input;
  if (phaseCurrentA.length !== 3 || angles.length !== 3) {
    throw new Refusal({
      code: 'length-mismatch',
      at: 'phaseCurrentA',
      got: phaseCurrentA.length,
      want: '3 currents and 3 angles',
      mend: 'Give 0 A for an idle phase.',
    });
  }
  const km = positive(input.lengthM, 'lengthM', 'Measure along the cable.') / 1000;
  const u = positive(input.sourcePhaseV, 'sourcePhaseV', 'Give the phase voltage at the source.');
  const r = finite(input.rOhmPerKm, 'rOhmPerKm') * km;
  const x = finite(input.xOhmPerKm ?? 0, 'xOhmPerKm') * km;
  const rn = finite(input.neutralROhmPerKm, 'neutralROhmPerKm') * km;
  const xn = finite(input.neutralXOhmPerKm ?? 0, 'neutralXOhmPerKm') * km;

  const re = phaseCurrentA.map((a, i) => finite(a, `phaseCurrentA[${i}]`) * Math.cos(rad(PHASE_DEG[i] + angles[i])));
  const im = phaseCurrentA.map((a, i) => a * Math.sin(rad(PHASE_DEG[i] + finite(angles[i], `angle[${i}]`))));
  const nRe = re[0] + re[1] + re[2];
  const nIm = im[0] + im[1] + im[2];
  const neutralV = [rn * nRe - xn * nIm, rn * nIm + xn * nRe];

  const phase = (i: number): FourWirePhase => {
    const vRe = u * Math.cos(rad(PHASE_DEG[i])) - (r * re[i] - x * im[i]) - neutralV[0];
    const vIm = u * Math.sin(rad(PHASE_DEG[i])) - (r * im[i] + x * re[i]) - neutralV[1];
    const loadEndPhaseToNeutralV = Math.hypot(vRe, vIm);
    return { loadEndPhaseToNeutralV, dropV: u - loadEndPhaseToNeutralV };
  };
  return {
    neutralCurrentA: Math.hypot(nRe, nIm),
    neutralEndVoltageV: Math.hypot(neutralV[0], neutralV[1]),
    phases: { A: phase(0), B: phase(1), C: phase(2) },
  };
}

/**
 * Neutral current at unity power factor, A: √(a² + b² + c² − ab − bc − ca). Exports negative.
 * Split-phase has no such thing as 120°: there it is |I1 − I2|.
 */
export function neutralCurrentA(a: number, b: number, c: number): number {
  finite(a, 'a');
  finite(b, 'b');
  finite(c, 'c');
  // rounding may leave a hair below zero for equal currents
  return Math.sqrt(Math.max(0, a * a + b * b + c * c - a * b - b * c - c * a));
}
