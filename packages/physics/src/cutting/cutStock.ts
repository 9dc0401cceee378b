import { positive, Refusal, within } from '../refusal.ts';

export interface CutStockInput {
  /** Length of one stock bar. */
  readonly binCapacity: number;
  /** Lengths wanted, in the same unit. */
  readonly sizes: readonly number[];
  /** Width of a saw cut. Default 0. */
  readonly kerf?: number;
}

export interface CutPlan {
  /** Lengths cut from each bar. */
  readonly bins: readonly (readonly number[])[];
  /** The same by position in `sizes`. */
  readonly items: readonly (readonly number[])[];
  readonly count: number;
  readonly lowerBound: number;
  /** Nothing better exists: the count equals the bound. */
  readonly proven: boolean;
  /** Stock length less pieces and cuts, over all bars. */
  readonly waste: number;
}

/** Lengths such as 0.1 + 0.2 must not cost a bar. */
const SLACK = 1e-9;
/** Steps a bar's search for the tightest filling may take; enough for a roof, and a bar of thirty pieces stops there. */
const FILL_STEPS = 4000;

/**
 * Cuts wanted lengths from stock bars, few bars, with a bound that tells how few there could be.
 *
 * A kerf goes with every piece but one that ends flush: capacity L + k, weights w + k. Best of three: first-fit
 * decreasing, best-fit decreasing, and filling one bar after the other as tightly as possible round its longest
 * piece. The bound is the greater of material and Martello–Toth L2. Where count and bound differ the plan may
 * still be the best; it is not proven.
 *
 * @throws {Refusal} `not-positive`, `outside-range` (a piece longer than the stock), `missing`.
 *
 * Source: Martello and Toth 1990; Gupta and Ho 1999 (minimum bin slack).
 */
export function cutStock(input: CutStockInput): CutPlan {
  const stock = positive(input.binCapacity, 'binCapacity', 'Give the stock length.');
  const kerf = within(input.kerf ?? 0, 0, stock, 'kerf', 'Give the width of the saw cut, 0 for none.');
  if (input.sizes.length === 0) {
    throw new Refusal({ code: 'missing', at: 'sizes', got: 0, want: 'at least one length', mend: 'Give the lengths.' });
  }
  const capacity = stock + kerf;
  const weights = input.sizes.map((size, i) => {
    positive(size, `sizes[${i}]`, 'Give a length.');
    return within(size, 0, stock, `sizes[${i}]`, 'Split it with a splice, or take longer stock.') + kerf;
  });
  const order = weights.map((_, i) => i).sort((a, b) => weights[b] - weights[a] || a - b);
  const lowerBound = barsAtLeast(weights, capacity);

  let items = firstFit(order, weights, capacity);
  for (const other of [bestFit, tightFill]) {
    if (items.length === lowerBound) break;
    const found = other(order, weights, capacity);
    if (found.length < items.length) items = found;
  }
  const used = weights.reduce((sum, w) => sum + w, 0);
  return {
    bins: items.map((bar) => bar.map((i) => input.sizes[i])),
    items,
    count: items.length,
    lowerBound,
    proven: items.length === lowerBound,
    waste: items.length * capacity - used,
  };
}

/** Bars no plan can do without: material, and Martello–Toth L2 over all its thresholds. */
export function barsAtLeast(weights: readonly number[], capacity: number): number {
  const total = weights.reduce((sum, w) => sum + w, 0);
  let bound = ceil(total / capacity);
  const half = capacity / 2;
  const thresholds = [0, ...new Set(weights.filter((w) => w <= half))];
  for (const k of thresholds) {
    // large pieces no other fits beside; pieces above a half, one a bar; small pieces that must use what is left
    let alone = 0;
    let big = 0;
    let bigSum = 0;
    let smallSum = 0;
    for (const w of weights) {
      if (w > capacity - k) alone++;
      else if (w > half) {
        big++;
        bigSum += w;
      } else if (w >= k) smallSum += w;
    }
    const beyond = (smallSum - (big * capacity - bigSum)) / capacity;
    bound = Math.max(bound, alone + big + Math.max(0, ceil(beyond)));
  }
  return bound;
}

function ceil(bars: number): number {
  return Math.ceil(bars - SLACK);
}

type Packing = number[][];

function firstFit(order: readonly number[], weights: readonly number[], capacity: number): Packing {
  return fit(order, weights, capacity, (left, w) => left.findIndex((room) => room >= w - SLACK));
}

function bestFit(order: readonly number[], weights: readonly number[], capacity: number): Packing {
  return fit(order, weights, capacity, (left, w) => {
    let best = -1;
    left.forEach((room, bar) => {
      if (room >= w - SLACK && (best < 0 || room < left[best])) best = bar;
    });
    return best;
  });
}

function fit(
  order: readonly number[],
  weights: readonly number[],
  capacity: number,
  choose: (left: readonly number[], weight: number) => number,
): Packing {
  const bars: Packing = [];
  const left: number[] = [];
  for (const i of order) {
    let bar = choose(left, weights[i]);
    if (bar < 0) {
      bar = bars.push([]) - 1;
      left.push(capacity);
    }
    bars[bar].push(i);
    left[bar] -= weights[i];
  }
  return bars;
}

/** One bar after the other: the longest piece left, and the set beside it that leaves the least. */
function tightFill(order: readonly number[], weights: readonly number[], capacity: number): Packing {
  let rest = [...order];
  const bars: Packing = [];
  while (rest.length > 0) {
    const [longest, ...others] = rest;
    const beside = tightest(others, weights, capacity - weights[longest]);
    const bar = [longest, ...beside];
    const taken = new Set(bar);
    bars.push(bar);
    rest = rest.filter((i) => !taken.has(i));
  }
  return bars;
}

/** The subset of pieces (longest first) that leaves the least of `room`, within a number of steps. */
function tightest(pieces: readonly number[], weights: readonly number[], room: number): number[] {
  let best: number[] = [];
  let bestLeft = room;
  let steps = 0;
  const chosen: number[] = [];

  function search(from: number, left: number): boolean {
    if (left < bestLeft - SLACK) {
      bestLeft = left;
      best = [...chosen];
    }
    if (bestLeft <= SLACK || steps++ > FILL_STEPS) return true;
    let tried = Number.NaN;
    for (let k = from; k < pieces.length; k++) {
      const w = weights[pieces[k]];
      // a piece of the same length was already tried here
      if (w > left + SLACK || w === tried) continue;
      tried = w;
      chosen.push(pieces[k]);
      if (search(k + 1, left - w)) return true;
      chosen.pop();
    }
    return false;
  }
  search(0, room);
  return best;
}
