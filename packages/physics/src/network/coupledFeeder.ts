import { finite, positive, Refusal } from '../refusal.ts';
import type { Complex } from './powerFlow.ts';

/** A stretch with coupling between the phases: 3 × 3 series impedance, [r, x] in Ω for the whole stretch. */
export interface CoupledLine {
  readonly kind: 'line';
  readonly zOhm: readonly (readonly Complex[])[];
}

/** An ideal transformer, star to star, with its series impedance on the low side, Ω. */
export interface StarTransformer {
  readonly kind: 'transformer';
  /** High over low voltage. */
  readonly ratio: number;
  readonly zLowOhm: Complex;
}

export type FeederStage = CoupledLine | StarTransformer;

export interface CoupledFeederInput {
  /** Line to ground at the source, three phases. */
  readonly sourceV: readonly Complex[];
  /** From the source outward. */
  readonly stages: readonly FeederStage[];
  /** Constant power taken at the far end, per phase: [W, var]. */
  readonly loadVa: readonly Complex[];
}

export interface CoupledFeeder {
  /** Line to ground; node 0 is the source, node k stands after stage k. */
  readonly nodeV: readonly (readonly Complex[])[];
  /** Into each stage from the source side, A. */
  readonly stageA: readonly (readonly Complex[])[];
  readonly rounds: number;
}

const mul = (a: Complex, b: Complex): Complex => [a[0] * b[0] - a[1] * b[1], a[0] * b[1] + a[1] * b[0]];
const sub = (a: Complex, b: Complex): Complex => [a[0] - b[0], a[1] - b[1]];
const scale = (a: Complex, k: number): Complex => [a[0] * k, a[1] * k];

/** i = conj(S / v) of one phase. */
function loadCurrent([p, q]: Complex, [re, im]: Complex): Complex {
  const squared = re * re + im * im;
  return [(p * re + q * im) / squared, (p * im - q * re) / squared];
}

/** Voltages after a stage, from those before it and the current that enters it. */
function across(stage: FeederStage, before: readonly Complex[], inA: readonly Complex[]): Complex[] {
  if (stage.kind === 'transformer') {
    return before.map((v, k) => sub(scale(v, 1 / stage.ratio), mul(stage.zLowOhm, scale(inA[k], stage.ratio))));
  }
  return before.map((v, row) => {
    let out = v;
    for (let col = 0; col < 3; col++) out = sub(out, mul(stage.zOhm[row][col], inA[col]));
    return out;
  });
}

/**
 * Three-phase feeder with mutual impedances and a star–star transformer, loaded at its end.
 *
 * For published feeders and long overhead runs, where the coupling between phases matters; inside a house the
 * conductors of `powerFlow` are enough. Backward and forward sweeps to `toleranceV`.
 *
 * @throws {Refusal} `length-mismatch`, `not-finite`, `no-solution`.
 *
 * Source: Kersting 2001, IEEE PES test feeders.
 */
export function coupledFeeder(input: CoupledFeederInput, { toleranceV = 1e-9, maxRounds = 500 } = {}): CoupledFeeder {
  check(input);
  const { sourceV, stages, loadVa } = input;
  let nodeV: (readonly Complex[])[] = noLoad(sourceV, stages);
  for (let round = 1; round <= maxRounds; round++) {
    const end = nodeV[nodeV.length - 1];
    let current: readonly Complex[] = loadVa.map((s, k) => loadCurrent(s, end[k]));
    const stageA: (readonly Complex[])[] = [];
    for (let i = stages.length - 1; i >= 0; i--) {
      const stage = stages[i];
      if (stage.kind === 'transformer') current = current.map((a) => scale(a, 1 / stage.ratio));
      stageA.unshift(current);
    }
    const next: (readonly Complex[])[] = [sourceV];
    for (let i = 0; i < stages.length; i++) next.push(across(stages[i], next[i], stageA[i]));
    const change = Math.max(...next[stages.length].map((v, k) => Math.hypot(v[0] - end[k][0], v[1] - end[k][1])));
    nodeV = next;
    if (change < toleranceV) return { nodeV, stageA, rounds: round };
  }
  throw new Refusal({
    code: 'no-solution',
    at: 'loadVa',
    got: `no steady voltage in ${maxRounds} rounds`,
    want: 'a load the feeder can carry',
    mend: 'Lower the load.',
  });
}

function noLoad(sourceV: readonly Complex[], stages: readonly FeederStage[]): Complex[][] {
  const idle: Complex[] = [
    [0, 0],
    [0, 0],
    [0, 0],
  ];
  const nodes: Complex[][] = [[...sourceV]];
  for (const stage of stages) nodes.push(across(stage, nodes[nodes.length - 1], idle));
  return nodes;
}

function check({ sourceV, stages, loadVa }: CoupledFeederInput): void {
  const square = stages.every(
    (s) => s.kind === 'transformer' || (s.zOhm.length === 3 && s.zOhm.every((r) => r.length === 3)),
  );
  if (sourceV.length !== 3 || loadVa.length !== 3 || !square || stages.length === 0) {
    throw new Refusal({
      code: 'length-mismatch',
      at: 'stages',
      got: `${sourceV.length} voltages, ${loadVa.length} loads`,
      want: 'three phases throughout, 3 × 3 impedances, at least one stage',
      mend: 'Give zero for a phase that carries nothing.',
    });
  }
  for (const [p, q] of [...sourceV, ...loadVa]) finite(p + q, 'loadVa');
  stages.forEach((s, i) => {
    if (s.kind === 'transformer') positive(s.ratio, `stages[${i}].ratio`, 'Give high over low voltage.');
  });
}
