import { type Cutting, onGrid } from './onGrid.ts';

/**
 * Why fewer bars cannot do: no bar can hold pieces worth more than `barWorth`, and all pieces together are worth
 * more than one bar less could hold.
 */
export interface Worths {
  /** Worth of one piece of each class, a whole number. */
  readonly worths: readonly number[];
  /** What the pieces of one bar are worth at most. */
  readonly barWorth: number;
  /** ⌈Σ worth / barWorth⌉. */
  readonly bars: number;
}

/** Bars no plan can do without, by material and Martello–Toth L2; `weights` and `capacity` include the kerf. */
export function barsAtLeast(weights: readonly number[], capacity: number): number {
  return worthsL2(onGrid(weights, capacity, 0)).bars;
}

/**
 * The Martello–Toth bound L2 as worths.
 *
 * For a threshold t up to half a bar: pieces over C − t are worth a whole bar, for nothing from t upward fits
 * beside them; pieces under t are worth nothing; the others their length. And pieces over half a bar count one each.
 *
 * Source: Martello and Toth 1990, section 8.3; as worths: Lueker 1983. From memory.
 */
export function worthsL2(cutting: Cutting): Worths {
  const { capacity, weights, demand } = cutting;
  let best = worthsOf(
    weights.map((w) => (2 * w > capacity ? 1 : 0)),
    1,
    demand,
  );
  for (const least of [0, ...weights.filter((w) => 2 * w <= capacity)]) {
    let total = 0;
    weights.forEach((w, k) => {
      if (w >= least) total += (w > capacity - least ? capacity : w) * demand[k];
    });
    if (wholeBars(total, capacity) <= best.bars) continue;
    best = worthsOf(
      weights.map((w) => (w < least ? 0 : w > capacity - least ? capacity : w)),
      capacity,
      demand,
    );
  }
  return best;
}

/** Worths with the bars they ask for. */
export function worthsOf(worths: readonly number[], barWorth: number, demand: readonly number[]): Worths {
  const total = worths.reduce((sum, worth, k) => sum + worth * demand[k], 0);
  return { worths, barWorth, bars: wholeBars(total, barWorth) };
}

/** ⌈total / bar⌉ of whole numbers, without a quotient that could round. */
function wholeBars(total: number, bar: number): number {
  const over = total % bar;
  return (total - over) / bar + (over > 0 ? 1 : 0);
}
