import type { Pattern } from './onGrid.ts';

/** Elementary steps a search may still take: a promise about time that is the same on every machine. */
export interface Effort {
  left: number;
}

export interface PatternChoice {
  readonly value: number;
  /** Left out where nothing is worth more than the floor. */
  readonly pattern?: Pattern;
}

/** What may go into one bar. */
export interface Bar {
  readonly capacity: number;
  readonly weights: readonly number[];
  /** Most pieces of each class. */
  readonly demand: readonly number[];
}

/**
 * The pieces of one bar that are worth most together, if worth more than `floor`.
 *
 * Bounded knapsack by dynamic programming over the sums that can occur: sums ascending, each kept only if worth
 * more than every shorter one, and dropped where even the densest piece to come could not lift it above the best.
 * Sums that cannot occur cost nothing, so steps of a micrometre are no dearer than steps of a metre.
 *
 * @param worths  Worth of a piece of each class; pieces worth nothing are left out.
 * @returns The greatest worth (`floor` if none is above it) and its pattern; nothing if the effort ended first.
 *
 * Exact for whole worths below 10¹²; for fractions to their rounding.
 *
 * Source: Martello and Toth 1990, chapter 2 and 3 (states and dominance), from memory.
 */
export function bestPattern(
  bar: Bar,
  worths: ArrayLike<number>,
  floor: number,
  effort: Effort,
): PatternChoice | undefined {
  const { capacity, weights, demand } = bar;
  const density = (k: number) => worths[k] / weights[k];
  const order = [...weights.keys()].filter((k) => worths[k] > 0 && demand[k] > 0 && weights[k] <= capacity);
  order.sort((a, b) => density(b) - density(a) || a - b);

  const search = new Search(capacity, floor);
  for (let at = 0; at < order.length; at++) {
    const k = order[at];
    const nextDensity = at + 1 < order.length ? density(order[at + 1]) : 0;
    const most = Math.min(demand[k], Math.floor(capacity / weights[k]));
    for (let copy = 1; copy <= most; copy++) {
      effort.left -= search.count;
      if (effort.left < 0) return undefined;
      // a copy nobody took: one more is not wanted either
      if (!search.add(k, weights[k], worths[k], copy < most ? density(k) : nextDensity)) break;
    }
  }
  return { value: search.best, ...search.pattern() };
}

/** Sums that can occur in a bar, ascending, with the greatest worth of each; worths ascend with them. */
class Search {
  count = 1;
  best: number;
  private bestNode = -1;
  private sums: number[] = [0];
  private values: number[] = [0];
  /** Last piece of the state, as a node of the trail; −1 for an empty bar. */
  private nodes: number[] = [-1];
  private spare: [number[], number[], number[]] = [[], [], []];
  private readonly trailClass: number[] = [];
  private readonly trailBefore: number[] = [];
  private readonly capacity: number;

  constructor(capacity: number, floor: number) {
    this.capacity = capacity;
    this.best = floor;
  }

  /** Every state, and every state with one more piece, merged; true if a state with the piece was kept. */
  add(k: number, weight: number, worth: number, densityToCome: number): boolean {
    const { sums, values, nodes, count, capacity } = this;
    const [newSums, newValues, newNodes] = this.spare;
    let kept = 0;
    let taken = false;
    let highest = -1;
    let plain = 0;
    let grown = 0;
    while (plain < count || grown < count) {
      let grownSum = grown < count ? sums[grown] + weight : Number.POSITIVE_INFINITY;
      if (grownSum > capacity) {
        grown = count;
        grownSum = Number.POSITIVE_INFINITY;
        if (plain >= count) break;
      }
      const grownValue = grown < count ? values[grown] + worth : 0;
      const plainSum = plain < count ? sums[plain] : Number.POSITIVE_INFINITY;
      const isGrown = grownSum < plainSum || (grownSum === plainSum && grownValue > values[plain]);
      const sum = isGrown ? grownSum : plainSum;
      const value = isGrown ? grownValue : values[plain];
      const from = isGrown ? nodes[grown++] : nodes[plain++];
      if (value <= highest) continue;
      highest = value;
      const better = value > this.best;
      const hopeless = value + densityToCome * (capacity - sum) <= (better ? value : this.best);
      if (hopeless && !better) continue;
      const node = isGrown ? this.trailClass.push(k) - 1 : from;
      if (isGrown) this.trailBefore.push(from);
      if (better) {
        this.best = value;
        this.bestNode = node;
      }
      if (hopeless) continue;
      taken ||= isGrown;
      newSums[kept] = sum;
      newValues[kept] = value;
      newNodes[kept++] = node;
    }
    this.spare = [sums, values, nodes];
    this.sums = newSums;
    this.values = newValues;
    this.nodes = newNodes;
    this.count = kept;
    return taken;
  }

  /** The pieces of the best state, gathered along its trail; neighbours on the trail are of one class. */
  pattern(): { pattern?: Pattern } {
    if (this.bestNode < 0) return {};
    const classes: number[] = [];
    const counts: number[] = [];
    for (let node = this.bestNode; node >= 0; node = this.trailBefore[node]) {
      const k = this.trailClass[node];
      if (classes.at(-1) === k) counts[counts.length - 1]++;
      else {
        classes.push(k);
        counts.push(1);
      }
    }
    return { pattern: { classes, counts } };
  }
}
