import { finite, positive, Refusal } from '../refusal.ts';

export type FlowConductor = 'A' | 'B' | 'C' | 'N';
export type FlowSystem = 'single-phase' | 'three-phase-4w' | 'split-phase';

/** A stretch of cable or a lumped impedance between two nodes; every conductor has its own series impedance. */
export interface FlowSegment {
  readonly id: string;
  readonly from: string;
  readonly to: string;
  readonly conductors: readonly FlowConductor[];
  readonly lengthM?: number;
  readonly rOhmPerKm?: number;
  readonly xOhmPerKm?: number;
  readonly neutralROhmPerKm?: number;
  readonly neutralXOhmPerKm?: number;
  /** Lumped instead of length and Ω/km: [r, x], Ω. */
  readonly zPhaseOhm?: readonly [number, number];
  readonly zNeutralOhm?: readonly [number, number];
}

/** Power put in (positive) or taken (negative) between two conductors of a node. */
export interface FlowInjection {
  readonly node: string;
  readonly between: readonly [FlowConductor, FlowConductor];
  /** `module-inverter` counts for the highest rise. */
  readonly kind?: string;
  readonly pW: number;
  readonly qVar?: number;
}

export interface FlowCase {
  readonly system: FlowSystem;
  /** Line to neutral; 120 for 120/240 and 208Y/120. */
  readonly nominalV: number;
  /** Voltage of the ideal source, line to neutral. Left out: nominal. */
  readonly sourceV?: number;
  readonly segments: readonly FlowSegment[];
  readonly injections: readonly FlowInjection[];
  /** Default `SRC`. */
  readonly sourceNode?: string;
  /** Where rise is counted from when it exists. Default `POS`. */
  readonly pointOfSupply?: string;
}

const CONDUCTORS = ['A', 'B', 'C', 'N'] as const;
const CARRIED: Readonly<Record<FlowSystem, readonly FlowConductor[]>> = {
  'single-phase': ['A', 'N'],
  'three-phase-4w': ['A', 'B', 'C', 'N'],
  'split-phase': ['A', 'B', 'N'],
};

/** A network as flat arrays, ready to be solved many times with different powers. Slot = node·4 + conductor. */
export interface CompiledFlow {
  readonly nodes: readonly string[];
  readonly nodeIndex: ReadonlyMap<string, number>;
  /** 1 where the node has the conductor. */
  readonly present: Uint8Array;
  /** Wires in breadth-first order, so that every wire comes after the one that feeds it. */
  readonly child: Int32Array;
  readonly parent: Int32Array;
  readonly rOhm: Float64Array;
  readonly xOhm: Float64Array;
  /** For each wire: its segment, and +1 if the segment is written from the source outward. */
  readonly segmentOf: Int32Array;
  readonly direction: Int8Array;
  readonly injectA: Int32Array;
  readonly injectB: Int32Array;
  /** Source voltages of the four conductors. */
  readonly sourceRe: Float64Array;
  readonly sourceIm: Float64Array;
}

/** Conductor letter to place in a slot. */
export function conductorIndex(c: FlowConductor): number {
  return CONDUCTORS.indexOf(c);
}

/** Place in a slot to conductor letter. */
export function conductorName(index: number): FlowConductor {
  return CONDUCTORS[index] as FlowConductor;
}

function impedance(s: FlowSegment, c: FlowConductor, at: string): readonly [number, number] {
  const lumped = c === 'N' ? (s.zNeutralOhm ?? s.zPhaseOhm) : s.zPhaseOhm;
  if (lumped) return [finite(lumped[0], `${at}.zPhaseOhm`), finite(lumped[1], `${at}.zPhaseOhm`)];
  const km = finite(s.lengthM as number, `${at}.lengthM`, 'Give a length and Ω/km, or a lumped impedance.') / 1000;
  const neutral = c === 'N';
  const r = (neutral ? s.neutralROhmPerKm : undefined) ?? s.rOhmPerKm;
  const x = (neutral ? s.neutralXOhmPerKm : undefined) ?? s.xOhmPerKm ?? 0;
  const ohm = finite(r as number, `${at}.rOhmPerKm`, 'Give the resistance of one conductor per kilometre.');
  if (ohm < 0 || km < 0) {
    throw new Refusal({
      code: 'outside-range',
      at,
      got: ohm < 0 ? ohm : km,
      want: '0 or more',
      mend: 'Lengths and resistances are never negative.',
    });
  }
  return [ohm * km, finite(x, `${at}.xOhmPerKm`) * km];
}

interface Reached {
  readonly node: string;
  readonly by: number;
  readonly outward: boolean;
}

/** Breadth-first from the source; refuses loops and what it cannot reach. */
function walk(net: FlowCase, source: string): Reached[] {
  const touching = new Map<string, number[]>();
  net.segments.forEach((s, i) => {
    for (const end of [s.from, s.to]) touching.set(end, [...(touching.get(end) ?? []), i]);
  });
  const seen = new Set([source]);
  const used = new Set<number>();
  const order: Reached[] = [];
  const queue = [source];
  for (let head = 0; head < queue.length; head++) {
    const here = queue[head];
    for (const i of touching.get(here) ?? []) {
      if (used.has(i)) continue;
      used.add(i);
      const s = net.segments[i];
      const outward = s.from === here;
      const there = outward ? s.to : s.from;
      if (seen.has(there)) {
        throw new Refusal({
          code: 'inconsistent',
          at: `segments[${i}]`,
          got: `${s.id}: ${s.from} to ${s.to}`,
          want: 'no loop',
          mend: 'Open the loop: this method is for trees.',
        });
      }
      seen.add(there);
      order.push({ node: there, by: i, outward });
      queue.push(there);
    }
  }
  const left = net.segments.findIndex((_, i) => !used.has(i));
  if (left >= 0) {
    throw new Refusal({
      code: 'inconsistent',
      at: `segments[${left}]`,
      got: net.segments[left].id,
      want: `a way back to ${source}`,
      mend: 'Join this part to the supply, or take it out.',
    });
  }
  return order;
}

function sourceVoltages(net: FlowCase): { re: Float64Array; im: Float64Array } {
  const v = positive(net.sourceV ?? net.nominalV, 'nominalV', 'Give the phase voltage of the source.');
  const re = new Float64Array(4);
  const im = new Float64Array(4);
  re[0] = v;
  if (net.system === 'split-phase') re[1] = -v;
  if (net.system === 'three-phase-4w') {
    re[1] = re[2] = -v / 2;
    im[1] = (-v * Math.sqrt(3)) / 2;
    im[2] = (v * Math.sqrt(3)) / 2;
  }
  return { re, im };
}

/**
 * Turns a tree of segments and injections into flat arrays.
 *
 * @throws {Refusal} `inconsistent` for a loop, an unreached part or a conductor that has no way home;
 *                   `unknown-name` for an injection at a node or on a conductor that is not there.
 */
export function compileFlow(net: FlowCase): CompiledFlow {
  const source = net.sourceNode ?? 'SRC';
  const carried = CARRIED[net.system];
  if (!carried) {
    throw new Refusal({
      code: 'unknown-name',
      at: 'system',
      got: net.system,
      want: Object.keys(CARRIED).join(', '),
      mend: 'Name the supply system.',
    });
  }
  const order = walk(net, source);
  const nodes = [source, ...order.map((o) => o.node)];
  const nodeIndex = new Map(nodes.map((name, i) => [name, i]));
  const present = new Uint8Array(nodes.length * 4);
  for (const c of carried) present[conductorIndex(c)] = 1;

  const wires: { child: number; parent: number; z: readonly [number, number]; seg: number; dir: number }[] = [];
  order.forEach(({ node, by, outward }) => {
    const s = net.segments[by];
    const from = nodeIndex.get(outward ? s.from : s.to) as number;
    for (const c of s.conductors) {
      const k = conductorIndex(c);
      const child = (nodeIndex.get(node) as number) * 4 + k;
      if (k < 0 || !present[from * 4 + k]) {
        throw new Refusal({
          code: 'inconsistent',
          at: `segments[${by}].conductors`,
          got: c,
          want: 'a conductor the node before it has',
          mend: `Carry ${c} all the way from ${source}.`,
        });
      }
      present[child] = 1;
      wires.push({
        child,
        parent: from * 4 + k,
        z: impedance(s, c, `segments[${by}]`),
        seg: by,
        dir: outward ? 1 : -1,
      });
    }
  });
  const { re, im } = sourceVoltages(net);
  const ends = (end: 0 | 1) => Int32Array.from(net.injections, (j, i) => injectionSlot(j, i, end, nodeIndex, present));
  return {
    nodes,
    nodeIndex,
    present,
    child: Int32Array.from(wires, (w) => w.child),
    parent: Int32Array.from(wires, (w) => w.parent),
    rOhm: Float64Array.from(wires, (w) => w.z[0]),
    xOhm: Float64Array.from(wires, (w) => w.z[1]),
    segmentOf: Int32Array.from(wires, (w) => w.seg),
    direction: Int8Array.from(wires, (w) => w.dir),
    injectA: ends(0),
    injectB: ends(1),
    sourceRe: re,
    sourceIm: im,
  };
}

function injectionSlot(
  j: FlowInjection,
  i: number,
  end: 0 | 1,
  nodeIndex: ReadonlyMap<string, number>,
  present: Uint8Array,
): number {
  const node = nodeIndex.get(j.node);
  const k = conductorIndex(j.between[end]);
  if (node === undefined || k < 0 || !present[node * 4 + k] || j.between[0] === j.between[1]) {
    throw new Refusal({
      code: 'unknown-name',
      at: `injections[${i}]`,
      got: `${j.node} ${j.between.join('-')}`,
      want: 'two different conductors that reach this node',
      mend: 'Bring the conductors to the node, or move the unit.',
    });
  }
  return node * 4 + k;
}
