/** Wanted lengths as whole steps of a grid: longest piece first, equal lengths in one class. */
export interface Cutting {
  /** What one bar holds, in steps: stock and one kerf. */
  readonly capacity: number;
  /** Distinct weights (length and kerf), in steps, descending. */
  readonly weights: readonly number[];
  /** Pieces of each weight. */
  readonly demand: readonly number[];
  /** Class of each piece, longest piece first. */
  readonly classOf: readonly number[];
  /** Place of each piece in the caller's list. */
  readonly placeOf: readonly number[];
}

/** One bar's pieces: so many of each class. */
export interface Pattern {
  readonly classes: readonly number[];
  readonly counts: readonly number[];
}

/** Decimal places of the stock that count: finer than any tape, and sums of a hundred thousand pieces stay exact. */
const PLACES = 9;

/**
 * Puts lengths on a grid of whole steps, so that no sum is ever a matter of rounding.
 *
 * A step is a power of ten, between 10⁻⁹ and 10⁻¹⁰ of the stock (one unit, for a stock of more than 10⁹ units);
 * afterwards all is divided by the weights' common divisor. Lengths are read to the nearest step: 0.1 and 0.2 fill a
 * bar of 0.3, and a bar of n pieces may be overfull by n half steps, far below what a saw can do. A kerf goes with
 * every piece but one that ends flush, which is capacity L + k and weights w + k.
 *
 * @param sizes  Lengths, each above 0 and not above the stock.
 */
export function onGrid(sizes: readonly number[], stock: number, kerf: number): Cutting {
  const scale = 10 ** Math.max(0, PLACES - Math.floor(Math.log10(stock)));
  const kerfSteps = Math.round(kerf * scale);
  const steps = sizes.map((size) => Math.max(1, Math.round(size * scale) + kerfSteps));
  const unit = steps.reduce(commonDivisor, 0);
  const placeOf = sizes.map((_, i) => i).sort((a, b) => steps[b] - steps[a] || a - b);
  const weights: number[] = [];
  const demand: number[] = [];
  const classOf = placeOf.map((place) => {
    const weight = steps[place] / unit;
    if (weights.at(-1) !== weight) {
      weights.push(weight);
      demand.push(0);
    }
    demand[demand.length - 1]++;
    return weights.length - 1;
  });
  const capacity = Math.floor((Math.round(stock * scale) + kerfSteps) / unit);
  return { capacity, weights, demand, classOf, placeOf };
}

function commonDivisor(a: number, b: number): number {
  return b === 0 ? a : commonDivisor(b, a % b);
}
