import { finite, Refusal, within } from '../refusal.ts';

/** Which supply: it fixes the angles of the lines. */
export type SupplyKind = 'single-phase' | 'split-phase' | 'three-phase';

/** Index of a line, 0 to 2, or the neutral. */
export type Terminal = 0 | 1 | 2 | 'N';

/** A source at unity power factor between two terminals. */
export interface PhasorSource {
  readonly from: Terminal;
  readonly to: Terminal;
  /** Power it pushes out, W. */
  readonly powerW: number;
}

/** Real and imaginary parts of the three lines and the neutral: `[L1, L2, L3, N]`, re and im in turn. */
export type Phasors = Float64Array;

const ANGLE_DEG: Record<SupplyKind, readonly number[]> = {
  'single-phase': [0, 0, 0],
  'split-phase': [0, 180, 0],
  'three-phase': [0, -120, 120],
};

/** Voltages of the lines to neutral at the source; the neutral is zero. */
export function sourcePhasors(kind: SupplyKind, nominalV: number): Phasors {
  const v = new Float64Array(8);
  ANGLE_DEG[kind].forEach((deg, line) => {
    v[2 * line] = nominalV * Math.cos((deg * Math.PI) / 180);
    v[2 * line + 1] = nominalV * Math.sin((deg * Math.PI) / 180);
  });
  return v;
}

const slot = (terminal: Terminal) => (terminal === 'N' ? 6 : 2 * terminal);

/**
 * Currents that sources push into a run of cable, each at nominal voltage.
 *
 * i = P / |V| along V = V(from) − V(to); it leaves on `from` and comes back on `to`.
 *
 * @throws {Refusal} `inconsistent` when both terminals of a source stand at one voltage.
 */
export function exportPhasors(sources: readonly PhasorSource[], voltage: Phasors): Phasors {
  const i = new Float64Array(8);
  sources.forEach(({ from, to, powerW }, k) => {
    const a = slot(from);
    const b = slot(to);
    const re = voltage[a] - voltage[b];
    const im = voltage[a + 1] - voltage[b + 1];
    const squared = re * re + im * im;
    if (squared < 1e-9) {
      throw new Refusal({
        code: 'inconsistent',
        at: `sources[${k}]`,
        got: `${from} to ${to}`,
        want: 'two terminals with a voltage between them',
        mend: 'Name two different lines, or a line and the neutral.',
      });
    }
    const perVolt = finite(powerW, `sources[${k}].powerW`) / squared;
    i[a] += re * perVolt;
    i[a + 1] += im * perVolt;
    i[b] -= re * perVolt;
    i[b + 1] -= im * perVolt;
  });
  return i;
}

/** r.m.s. current of each conductor, A: L1, L2, L3, N. */
export function magnitudes(i: Phasors): readonly [number, number, number, number] {
  return [Math.hypot(i[0], i[1]), Math.hypot(i[2], i[3]), Math.hypot(i[4], i[5]), Math.hypot(i[6], i[7])];
}

/** A run of cable: one-way length and the resistance of its conductors at service temperature. */
export interface PhasorRun {
  readonly lengthM: number;
  readonly lineOhmPerM: number;
  /** Where left out, the neutral is as thick as a line. */
  readonly neutralOhmPerM?: number;
}

/**
 * Lift of every conductor over a run, V: ΔV = R · I, conductor by conductor.
 *
 * Added up from the supply outward and laid on the direction of a unit's own voltage it gives the rise at that
 * unit (`riseBetween`): 2·R·I for line and neutral or line and line, R·I on a balanced three-phase run, and what lies
 * between when the lines carry unlike currents, since the neutral then carries their phasor sum.
 *
 * Resistance only: on cables to 16 mm² the reactance is below 8 % of it, and at unity power factor it turns the
 * voltage without lifting it. Source: Kirchhoff; Cheng and Shirmohammadi 1995 for the four-wire form.
 */
export function liftOver(run: PhasorRun, i: Phasors): Phasors {
  const m = within(run.lengthM, 0, 100_000, 'lengthM', 'Measure along the cable.');
  const line = finite(run.lineOhmPerM, 'lineOhmPerM') * m;
  const neutral = finite(run.neutralOhmPerM ?? run.lineOhmPerM, 'neutralOhmPerM') * m;
  return i.map((a, k) => a * (k < 6 ? line : neutral));
}

/** Sum of two sets of phasors. */
export function addPhasors(a: Phasors, b: Phasors): Phasors {
  return a.map((x, k) => x + b[k]);
}

/** Rise between two terminals: the lift of one less the lift of the other, along their own voltage. */
export function riseBetween(from: Terminal, to: Terminal, lift: Phasors, voltage: Phasors): number {
  const a = slot(from);
  const b = slot(to);
  const re = voltage[a] - voltage[b];
  const im = voltage[a + 1] - voltage[b + 1];
  return ((lift[a] - lift[b]) * re + (lift[a + 1] - lift[b + 1]) * im) / Math.hypot(re, im);
}
