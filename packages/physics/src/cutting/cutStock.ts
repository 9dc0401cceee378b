import { positive, Refusal, within } from '../refusal.ts';
import { type Worths, worthsL2 } from './barsAtLeast.ts';
import { dive } from './dive.ts';
import { bestFit, firstFit, tightFill } from './fitBars.ts';
import { type Cutting, onGrid, type Pattern } from './onGrid.ts';
import { solvePatterns, wholeWorths } from './patternProgramme.ts';

export interface CutStockInput {
  /** Length of one stock bar. */
  readonly binCapacity: number;
  /** Lengths wanted, in the same unit. */
  readonly sizes: readonly number[];
  /** Width of a saw cut. Default 0. */
  readonly kerf?: number;
}

/**
 * Why fewer bars cannot do, for anyone to check with whole numbers alone: no pieces that fit one bar are worth more
 * than `barWorth` together, so ⌈Σ worths / barWorth⌉ bars are needed.
 */
export interface CutCertificate {
  /** By position in `sizes`. */
  readonly worths: readonly number[];
  readonly barWorth: number;
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
  /** What the bound rests on. */
  readonly certificate: CutCertificate;
}

/** Elementary steps for first plans, bound, certificate and dives, each: together a fraction of a second. */
const EFFORT = 8e7;

/**
 * Cuts wanted lengths from stock bars, few bars, with a bound that tells how few there could be.
 *
 * Cheap first, ending as soon as count and bound agree: first-fit and best-fit decreasing and the tightest filling
 * of one bar after the other, against material and Martello–Toth L2; then the pattern programme for the bound and
 * dives through it for the plan. The bound holds in whole numbers, by a certificate that comes with the plan. Where
 * count and bound still differ the plan may be the best all the same; it is not proven. The work is limited by
 * counted steps, not by a clock: the same lengths give the same plan everywhere.
 *
 * A kerf goes with every piece but one that ends flush. Lengths are read to 10⁻⁹ of the stock. One stock length
 * only, no credit for off-cuts.
 *
 * @throws {Refusal} `not-positive`, `outside-range` (a piece longer than the stock), `missing`.
 *
 * Source: Gilmore and Gomory 1961; Farley 1990; Martello and Toth 1990; Harvey and Ginsberg 1995. From memory.
 */
export function cutStock(input: CutStockInput): CutPlan {
  const stock = positive(input.binCapacity, 'binCapacity', 'Give the stock length.');
  const kerf = within(input.kerf ?? 0, 0, stock, 'kerf', 'Give the width of the saw cut, 0 for none.');
  if (input.sizes.length === 0) {
    throw new Refusal({ code: 'missing', at: 'sizes', got: 0, want: 'at least one length', mend: 'Give the lengths.' });
  }
  input.sizes.forEach((size, i) => {
    positive(size, `sizes[${i}]`, 'Give a length.');
    within(size, 0, stock, `sizes[${i}]`, 'Split it with a splice, or take longer stock.');
  });
  const cutting = onGrid(input.sizes, stock, kerf);
  const { bars, least } = fewestBars(cutting, EFFORT);
  const items = placesOf(bars, cutting);
  const used = input.sizes.reduce((sum, size) => sum + size + kerf, 0);
  const worths = new Array<number>(input.sizes.length);
  cutting.placeOf.forEach((place, piece) => {
    worths[place] = least.worths[cutting.classOf[piece]];
  });
  return {
    bins: items.map((bar) => bar.map((i) => input.sizes[i])),
    items,
    count: items.length,
    lowerBound: least.bars,
    proven: items.length === least.bars,
    waste: items.length * (stock + kerf) - used,
    certificate: { worths, barWorth: least.barWorth },
  };
}

/**
 * Few bars, and the worths that tell how few there could be.
 *
 * @param steps  Elementary steps for first plans, bound, certificate and dives, each.
 */
export function fewestBars(cutting: Cutting, steps: number): { bars: readonly Pattern[]; least: Worths } {
  let least = worthsL2(cutting);
  const fills = { left: steps };
  let bars: readonly Pattern[] = firstFit(cutting, cutting.demand, fills);
  for (const other of [bestFit, tightFill]) {
    if (bars.length === least.bars || fills.left <= 0) break;
    const found = other(cutting, cutting.demand, fills);
    if (found.length < bars.length) bars = found;
  }
  if (bars.length === least.bars) return { bars, least };

  const pool = [...bars];
  const first = solvePatterns(cutting, cutting.demand, pool, bars.length, { left: steps });
  const whole = wholeWorths(cutting, first.worths, { left: steps });
  if (whole && whole.bars > least.bars) least = whole;
  // a target that cannot be reached must not use up all: half of what is left for each
  let share = steps / 2;
  for (let target = least.bars; target < bars.length && share > steps / 100; target++) {
    bars = dive(cutting, first, pool, target, { left: share }) ?? bars;
    share /= 2;
  }
  return { bars, least };
}

/** Each bar's pieces by place in the caller's list: the pieces of a class are handed out in order. */
function placesOf(bars: readonly Pattern[], { classOf, placeOf }: Cutting): number[][] {
  const waiting: number[][] = [];
  placeOf.forEach((place, piece) => {
    waiting[classOf[piece]] ??= [];
    waiting[classOf[piece]].push(place);
  });
  for (const places of waiting) places.reverse();
  return bars.map(({ classes, counts }) => {
    return classes.flatMap((k, at) => Array.from({ length: counts[at] }, () => waiting[k].pop() as number));
  });
}
