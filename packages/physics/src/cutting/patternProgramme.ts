import { type Worths, worthsOf } from './barsAtLeast.ts';
import { bestPattern, type Effort } from './bestPattern.ts';
import type { Cutting, Pattern } from './onGrid.ts';
import { type Column, Simplex } from './simplex.ts';

export interface PatternSolution {
  /** Bars, as a fraction, over the patterns known so far. */
  readonly value: number;
  /** Bars, as a fraction, that no plan can do without: Farley's bound. */
  readonly bound: number;
  /** Worth of a piece of each class that gives the bound. */
  readonly worths: ArrayLike<number>;
  /** Patterns in use, most used first. */
  readonly uses: readonly { readonly pattern: Pattern; readonly amount: number }[];
}

/** An error of the simplex; a bound is rounded up only where it exceeds a whole number by more. */
const DOUBT = 1e-6;
/** A bar worth more than 1 by less is no improvement. */
const SMALL = 1e-9;
/** Worths are kept in whole millionths. */
const WHOLE = 1e6;

/** The least whole number not below the bound, an error of the simplex aside. */
export function roundedUp(bound: number): number {
  return Math.ceil(bound - DOUBT);
}

/**
 * Pattern programme: least number of bars, fractions allowed, over all ways to fill one bar.
 *
 *     min Σ x[p]   with   Σ count[p][k] · x[p] = demand[k],   x ≥ 0
 *
 * Patterns are made when wanted: prices of the programme over the known ones, then the bar worth most at these
 * prices, a price below 0 counting as 0. If that bar is worth v > 1, then Σ price · demand / v is a bound already.
 * Ends when no bar is worth more than 1, when the rounded bound reaches the value, when it exceeds `enough`, or when
 * the effort is used up. The start cuts every class by itself, so that any demand has a solution.
 *
 * @param pool  Known patterns; those within the demand take part, new ones are added.
 *
 * Source: Gilmore and Gomory 1961, 1963; Farley 1990. From memory.
 */
export function solvePatterns(
  { capacity, weights }: Cutting,
  demand: readonly number[],
  pool: Pattern[],
  enough: number,
  effort: Effort,
): PatternSolution {
  const open = [...demand.keys()].filter((k) => demand[k] > 0);
  const rowOf = new Map(open.map((k, row) => [k, row]));
  const columnOf = ({ classes, counts }: Pattern): Column => ({
    cost: 1,
    rows: classes.map((k) => rowOf.get(k) as number),
    values: counts,
  });
  const single = open.map(
    (k): Pattern => ({
      classes: [k],
      counts: [Math.min(demand[k], Math.floor(capacity / weights[k]))],
    }),
  );
  const simplex = new Simplex(
    open.map((k) => demand[k]),
    single.map(columnOf),
  );
  const patterns = single;
  const take = (pattern: Pattern) => {
    patterns.push(pattern);
    simplex.columns.push(columnOf(pattern));
  };
  for (const pattern of pool) if (fits(pattern, demand)) take(pattern);

  const worths = new Float64Array(demand.length);
  let best: { bound: number; worths: ArrayLike<number> } = { bound: 0, worths };
  const mayPivot = () => {
    effort.left -= open.length * open.length;
    return effort.left > 0;
  };
  while (simplex.solve(mayPivot)) {
    open.forEach((k, row) => {
      worths[k] = Math.max(0, simplex.prices[row]);
    });
    const richest = bestPattern({ capacity, weights, demand }, worths, 1 + SMALL, effort);
    if (!richest) break;
    const { value, pattern } = richest;
    const bound = worths.reduce((sum, worth, k) => sum + worth * demand[k], 0) / value;
    if (bound > best.bound) best = { bound, worths: worths.slice() };
    if (!pattern || roundedUp(best.bound) >= Math.min(simplex.value, enough + 1)) break;
    pool.push(pattern);
    take(pattern);
  }
  const uses = simplex.uses.map(({ column, amount }) => ({ pattern: patterns[column], amount }));
  return { value: simplex.value, ...best, uses: uses.sort((a, b) => b.amount - a.amount) };
}

/** True if the demand holds every piece of the pattern. */
export function fits({ classes, counts }: Pattern, demand: readonly number[]): boolean {
  return classes.every((k, at) => counts[at] <= demand[k]);
}

/**
 * Prices of the pattern programme as whole worths, whose bound rests on no rounding: worth ⌊10⁶ · price⌋, and the
 * greatest worth of a bar by the same search in whole numbers. Nothing if the effort ended first.
 */
export function wholeWorths(cutting: Cutting, prices: ArrayLike<number>, effort: Effort): Worths | undefined {
  const worths = Array.from(prices, (price) => Math.floor(WHOLE * price));
  const richest = bestPattern(cutting, worths, 0, effort);
  return richest && worthsOf(worths, Math.max(1, richest.value), cutting.demand);
}
