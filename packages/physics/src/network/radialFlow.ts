import { finite, Refusal } from '../refusal.ts';
import type { CompiledFlow } from './flowNetwork.ts';

/** Voltages and currents by slot (node·4 + conductor). A wire's current belongs to its outer slot, towards the source. */
export interface FlowState {
  readonly vRe: Float64Array;
  readonly vIm: Float64Array;
  readonly iRe: Float64Array;
  readonly iIm: Float64Array;
  rounds: number;
}

/** Every node at the voltage of the source: where a solution starts from. */
export function coldState(net: CompiledFlow): FlowState {
  const slots = net.nodes.length * 4;
  const state = {
    vRe: new Float64Array(slots),
    vIm: new Float64Array(slots),
    iRe: new Float64Array(slots),
    iIm: new Float64Array(slots),
    rounds: 0,
  };
  for (let s = 0; s < slots; s++) {
    state.vRe[s] = net.sourceRe[s & 3];
    state.vIm[s] = net.sourceIm[s & 3];
  }
  return state;
}

/** Currents of all injections at the present voltages, gathered towards the source. */
function sweepInward(net: CompiledFlow, pW: ArrayLike<number>, qVar: ArrayLike<number>, st: FlowState): void {
  const { vRe, vIm, iRe, iIm } = st;
  const { injectA, injectB, child, parent } = net;
  iRe.fill(0);
  iIm.fill(0);
  for (let k = 0; k < injectA.length; k++) {
    const a = injectA[k];
    const b = injectB[k];
    const re = vRe[a] - vRe[b];
    const im = vIm[a] - vIm[b];
    const squared = re * re + im * im;
    // i = conj(S / v)
    const cRe = (pW[k] * re + qVar[k] * im) / squared;
    const cIm = (pW[k] * im - qVar[k] * re) / squared;
    iRe[a] += cRe;
    iIm[a] += cIm;
    iRe[b] -= cRe;
    iIm[b] -= cIm;
  }
  for (let w = child.length - 1; w >= 0; w--) {
    iRe[parent[w]] += iRe[child[w]];
    iIm[parent[w]] += iIm[child[w]];
  }
}

/** Voltages outward along every wire; returns the square of the largest change. */
function sweepOutward(net: CompiledFlow, st: FlowState): number {
  const { vRe, vIm, iRe, iIm } = st;
  const { child, parent, rOhm, xOhm } = net;
  let worst = 0;
  for (let w = 0; w < child.length; w++) {
    const c = child[w];
    const re = vRe[parent[w]] + rOhm[w] * iRe[c] - xOhm[w] * iIm[c];
    const im = vIm[parent[w]] + rOhm[w] * iIm[c] + xOhm[w] * iRe[c];
    const dRe = re - vRe[c];
    const dIm = im - vIm[c];
    const change = dRe * dRe + dIm * dIm;
    // written so that a NaN counts as worst
    if (!(change <= worst)) worst = change;
    vRe[c] = re;
    vIm[c] = im;
  }
  return worst;
}

/**
 * Radial power flow of up to four wires by backward and forward sweeps; changes `state` in place.
 *
 *     I = conj(S / V) at every injection, summed towards the source;  V = V(before) + Z·I outward;  again
 *
 * The neutral is a conductor like the others, fixed to zero only at the source. A contraction while |Z|·S/V²
 * is well below a quarter, so a 2 % network settles in a handful of rounds. A start from a neighbouring
 * scenario's state saves about a fifth of them.
 *
 * @param pW, qVar    one each for every injection; positive is put in.
 * @param toleranceV  largest change of a round at which it stops, V.
 * @throws {Refusal} `no-solution` when no steady state is found in `maxRounds`, naming the lowest voltage.
 *
 * No mutual coupling, no shunts. Source: Shirmohammadi and others 1988; Ciric, Feltrin and Ochoa 2003.
 */
export function runFlow(
  net: CompiledFlow,
  pW: ArrayLike<number>,
  qVar: ArrayLike<number>,
  state: FlowState = coldState(net),
  { toleranceV = 1e-10, maxRounds = 200 } = {},
): FlowState {
  for (let k = 0; k < net.injectA.length; k++) {
    finite(pW[k], `pW[${k}]`);
    finite(qVar[k], `qVar[${k}]`);
  }
  const stop = toleranceV * toleranceV;
  for (let round = 1; round <= maxRounds; round++) {
    sweepInward(net, pW, qVar, state);
    if (sweepOutward(net, state) < stop) {
      state.rounds = round;
      return state;
    }
  }
  throw noSteadyState(net, state, maxRounds);
}

function noSteadyState(net: CompiledFlow, st: FlowState, maxRounds: number): Refusal {
  let lowest = Number.POSITIVE_INFINITY;
  let where = 0;
  for (let k = 0; k < net.injectA.length; k++) {
    const a = net.injectA[k];
    const b = net.injectB[k];
    const v = Math.hypot(st.vRe[a] - st.vRe[b], st.vIm[a] - st.vIm[b]);
    if (!(v >= lowest)) {
      lowest = v;
      where = a >> 2;
    }
  }
  return new Refusal({
    code: 'no-solution',
    at: net.nodes[where],
    got: `no steady voltage in ${maxRounds} rounds`,
    want: 'a load the cables can carry',
    mend: 'Lower the power or enlarge the cables towards this node: it saw the lowest voltage.',
  });
}
