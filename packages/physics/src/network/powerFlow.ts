import { type CompiledFlow, compileFlow, conductorName, type FlowCase, type FlowConductor } from './flowNetwork.ts';
import { type FlowState, runFlow } from './radialFlow.ts';

export type Complex = readonly [re: number, im: number];
type ByConductor<T> = Partial<Record<FlowConductor, T>>;

export interface FlowTerminal {
  readonly injection: number;
  readonly terminalV: number;
  /** Against the ideal source voltage of the same pair, %. */
  readonly risePercentOfSourceV: number;
}

export interface PowerFlow {
  readonly nodeVoltageV: Readonly<Record<string, ByConductor<Complex>>>;
  readonly phaseToNeutralV: Readonly<Record<string, ByConductor<number>>>;
  /** Only of nodes that have a neutral. */
  readonly neutralShiftV: Readonly<Record<string, number>>;
  /** Positive from `from` to `to`. */
  readonly segmentCurrentA: Readonly<Record<string, ByConductor<Complex>>>;
  readonly lossesW: number;
  readonly reactiveLossesVar: number;
  /** Delivered by the source; negative is export. */
  readonly sourcePW: number;
  readonly sourceQVar: number;
  readonly terminals: readonly FlowTerminal[];
  /** Of the injections of kind `module-inverter`; left out when there is none. */
  readonly highestModuleInverter?: FlowTerminal & { readonly node: string };
  /** Of the same, against the voltage of the same pair at the point of supply, % of the pair's nominal. */
  readonly highestRiseFromPointOfSupply?: {
    readonly injection: number;
    readonly node: string;
    readonly percentOfNominal: number;
  };
  readonly rounds: number;
}

const NEUTRAL = 3;

function pairV(st: FlowState, a: number, b: number): number {
  return Math.hypot(st.vRe[a] - st.vRe[b], st.vIm[a] - st.vIm[b]);
}

function voltages(net: CompiledFlow, st: FlowState) {
  const nodeVoltageV: Record<string, ByConductor<Complex>> = {};
  const phaseToNeutralV: Record<string, ByConductor<number>> = {};
  const neutralShiftV: Record<string, number> = {};
  net.nodes.forEach((name, n) => {
    const volts: ByConductor<Complex> = {};
    const toNeutral: ByConductor<number> = {};
    const neutral = n * 4 + NEUTRAL;
    for (let k = 0; k < 4; k++) {
      const s = n * 4 + k;
      if (!net.present[s]) continue;
      volts[conductorName(k)] = [st.vRe[s], st.vIm[s]];
      if (k !== NEUTRAL && net.present[neutral]) toNeutral[conductorName(k)] = pairV(st, s, neutral);
    }
    nodeVoltageV[name] = volts;
    phaseToNeutralV[name] = toNeutral;
    if (net.present[neutral]) neutralShiftV[name] = Math.hypot(st.vRe[neutral], st.vIm[neutral]);
  });
  return { nodeVoltageV, phaseToNeutralV, neutralShiftV };
}

function currents(net: CompiledFlow, st: FlowState, flow: FlowCase) {
  const segmentCurrentA: Record<string, ByConductor<Complex>> = {};
  let lossesW = 0;
  let reactiveLossesVar = 0;
  net.child.forEach((c, w) => {
    const squared = st.iRe[c] ** 2 + st.iIm[c] ** 2;
    lossesW += net.rOhm[w] * squared;
    reactiveLossesVar += net.xOhm[w] * squared;
    const id = flow.segments[net.segmentOf[w]].id;
    const bySegment = segmentCurrentA[id] ?? {};
    segmentCurrentA[id] = bySegment;
    // stored towards the source, reported the way the segment is written
    const sign = -net.direction[w];
    bySegment[conductorName(c & 3)] = [sign * st.iRe[c], sign * st.iIm[c]];
  });
  let sourcePW = 0;
  let sourceQVar = 0;
  for (let k = 0; k < 4; k++) {
    sourcePW -= st.vRe[k] * st.iRe[k] + st.vIm[k] * st.iIm[k];
    sourceQVar -= st.vIm[k] * st.iRe[k] - st.vRe[k] * st.iIm[k];
  }
  return { segmentCurrentA, lossesW, reactiveLossesVar, sourcePW, sourceQVar };
}

function highest(net: CompiledFlow, st: FlowState, flow: FlowCase, terminals: readonly FlowTerminal[]) {
  const pos = net.nodeIndex.get(flow.pointOfSupply ?? 'POS');
  let top: FlowTerminal | undefined;
  let rise: PowerFlow['highestRiseFromPointOfSupply'];
  flow.injections.forEach((j, i) => {
    if (j.kind !== 'module-inverter') return;
    const t = terminals[i];
    if (!top || t.risePercentOfSourceV > top.risePercentOfSourceV) top = t;
    if (pos === undefined) return;
    const [a, b] = [net.injectA[i] & 3, net.injectB[i] & 3];
    if (!net.present[pos * 4 + a] || !net.present[pos * 4 + b]) return;
    const nominal = sourcePairV(net, i) * (flow.nominalV / (flow.sourceV ?? flow.nominalV));
    const percentOfNominal = (100 * (t.terminalV - pairV(st, pos * 4 + a, pos * 4 + b))) / nominal;
    if (!rise || percentOfNominal > rise.percentOfNominal) rise = { injection: i, node: j.node, percentOfNominal };
  });
  return {
    ...(top ? { highestModuleInverter: { ...top, node: flow.injections[top.injection].node } } : {}),
    ...(rise ? { highestRiseFromPointOfSupply: rise } : {}),
  };
}

function sourcePairV(net: CompiledFlow, injection: number): number {
  const a = net.injectA[injection] & 3;
  const b = net.injectB[injection] & 3;
  return Math.hypot(net.sourceRe[a] - net.sourceRe[b], net.sourceIm[a] - net.sourceIm[b]);
}

/** Everything worth saying about a solved network. */
export function flowReport(flow: FlowCase, net: CompiledFlow, st: FlowState): PowerFlow {
  const terminals = flow.injections.map((_, i) => {
    const terminalV = pairV(st, net.injectA[i], net.injectB[i]);
    return { injection: i, terminalV, risePercentOfSourceV: 100 * (terminalV / sourcePairV(net, i) - 1) };
  });
  return {
    ...voltages(net, st),
    ...currents(net, st, flow),
    terminals,
    ...highest(net, st, flow, terminals),
    rounds: st.rounds,
  };
}

/**
 * Solves a radial network at the powers its injections state: constant P and Q at the terminals.
 * See `runFlow` for method and limits; `compileFlow` for what it refuses.
 */
export function powerFlow(flow: FlowCase): PowerFlow {
  const net = compileFlow(flow);
  const pW = Float64Array.from(flow.injections, (j) => j.pW);
  const qVar = Float64Array.from(flow.injections, (j) => j.qVar ?? 0);
  return flowReport(flow, net, runFlow(net, pW, qVar));
}
