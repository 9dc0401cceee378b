import { finite, positive, Refusal, within } from '../refusal.ts';

/** One run of cable, numbered outward from the board; unit k sits at the outer end of span k. */
export interface Span {
  /** One-way length, m; 0 for a drop that sits on its joint. */
  readonly lengthM: number;
  /** Resistance of one conductor at service temperature, Ω/m. */
  readonly ohmPerM: number;
}

function checkedSpan({ lengthM, ohmPerM }: Span, at: string): number {
  within(lengthM, 0, 100_000, `${at}.lengthM`, 'Measure joint to joint along the cable.');
  return lengthM * positive(ohmPerM, `${at}.ohmPerM`, 'Give the resistance of one conductor per metre.');
}

/**
 * Voltage rise along a radial trunk of exporting units.
 *
 * A unit's current flows home through every span between it and the board, so
 * the first span carries most and the last unit sees the highest voltage:
 *
 *     rise[k] = Σ(j ≤ k)  b · L[j] · R[j] · Σ(m ≥ j) i[m]
 *
 * @param spans    n spans, board outward.
 * @param exportA  n currents, A r.m.s., positive towards the board.
 * @param b        2 for line and neutral or line and line, 1 for a balanced three-phase trunk (line to neutral).
 * @returns        n rises above the board, V.
 * @throws {Refusal} `length-mismatch`, `not-positive`, `outside-range`, `not-finite`.
 *
 * Holds at unity power factor. Units count as constant-current; at constant power
 * the rise is lower by about its own percentage, so this errs on the high side.
 *
 * Source: IEC 60364-5-52:2009, Annex G (from memory).
 */
export function trunkRiseV(spans: readonly Span[], exportA: ArrayLike<number>, b: 1 | 2 = 2): Float64Array {
  const n = spans.length;
  if (exportA.length !== n) {
    throw new Refusal({
      code: 'length-mismatch',
      at: 'exportA.length',
      got: exportA.length,
      want: `${n}, one per span`,
      mend: 'Give an idle unit a current of 0 A.',
    });
  }
  const riseV = new Float64Array(n);

  // inward: a span carries the sum of all units beyond it
  let carriedA = 0;
  for (let k = n - 1; k >= 0; k--) {
    carriedA += finite(exportA[k], `exportA[${k}]`, 'Give an idle unit a current of 0 A.');
    riseV[k] = b * checkedSpan(spans[k], `spans[${k}]`) * carriedA;
  }

  // outward: a unit stands on all the spans between it and the board
  for (let k = 1; k < n; k++) riseV[k] += riseV[k - 1];
  return riseV;
}

export interface FedTrunk {
  /** Where the drops are along the trunk, m, rising. */
  readonly dropAtM: readonly number[];
  /** Where the feed joins, m, on the same scale: at an end, between drops, or on a drop. */
  readonly feedAtM: number;
  /** Current of each drop, A r.m.s., positive towards the board. */
  readonly exportA: ArrayLike<number>;
  readonly trunkOhmPerM: number;
  /** Everything between the trunk's joint and the point the rise is counted from, in series. */
  readonly feed?: readonly Span[];
  readonly b?: 1 | 2;
}

export interface FedTrunkRise {
  /** Rise over the feed alone, V. */
  readonly feedV: number;
  /** Rise over each span of the feed, V, in the order given. */
  readonly feedSpansV: readonly number[];
  /** Rise at each drop above the far end of the feed, V. */
  readonly riseV: Float64Array;
  readonly highestV: number;
  readonly highestDrop: number;
  /** Current of the arm before the joint and of the arm after it, A; a drop on the joint belongs to the latter. */
  readonly armA: readonly [number, number];
}

/**
 * Rise of a trunk whose feed joins at any place: two arms, each a radial trunk, on one feed.
 *
 * @throws {Refusal} `missing` without drops, `inconsistent` when positions do not rise, and what `trunkRiseV` refuses.
 */
export function fedTrunkRise(trunk: FedTrunk): FedTrunkRise {
  const { dropAtM, feedAtM, exportA, trunkOhmPerM, feed = [], b = 2 } = trunk;
  checkPositions(dropAtM, feedAtM, exportA.length);
  const n = dropAtM.length;
  const split = dropAtM.filter((at) => at < feedAtM).length;

  const after = indices(split, n);
  const before = indices(0, split).reverse();
  const riseV = new Float64Array(n);
  const armA: [number, number] = [armRise(before), armRise(after)];

  function armRise(order: readonly number[]): number {
    let fromM = feedAtM;
    const spans = order.map((k) => {
      const span = { lengthM: Math.abs(dropAtM[k] - fromM), ohmPerM: trunkOhmPerM };
      fromM = dropAtM[k];
      return span;
    });
    const currents = order.map((k) => exportA[k]);
    const rises = trunkRiseV(spans, currents, b);
    order.forEach((k, i) => {
      riseV[k] = rises[i];
    });
    return currents.reduce((sum, a) => sum + a, 0);
  }

  const totalA = armA[0] + armA[1];
  const feedSpansV = feed.map((span, i) => b * checkedSpan(span, `feed[${i}]`) * totalA);
  const feedV = feedSpansV.reduce((sum, v) => sum + v, 0);
  let highestDrop = 0;
  for (let k = 0; k < n; k++) {
    riseV[k] += feedV;
    if (riseV[k] > riseV[highestDrop]) highestDrop = k;
  }
  return { feedV, feedSpansV, riseV, highestV: riseV[highestDrop], highestDrop, armA };
}

function indices(from: number, to: number): number[] {
  return Array.from({ length: to - from }, (_, i) => from + i);
}

function checkPositions(dropAtM: readonly number[], feedAtM: number, currents: number): void {
  finite(feedAtM, 'feedAtM', 'Say where along the trunk the feed joins.');
  if (dropAtM.length === 0) {
    throw new Refusal({ code: 'missing', at: 'dropAtM', got: 0, want: 'at least one drop', mend: 'Give the drops.' });
  }
  if (currents !== dropAtM.length) {
    throw new Refusal({
      code: 'length-mismatch',
      at: 'exportA.length',
      got: currents,
      want: `${dropAtM.length}, one per drop`,
      mend: 'Give an idle unit a current of 0 A.',
    });
  }
  dropAtM.forEach((at, k) => {
    finite(at, `dropAtM[${k}]`);
    if (k > 0 && at < dropAtM[k - 1]) {
      throw new Refusal({
        code: 'inconsistent',
        at: `dropAtM[${k}]`,
        got: at,
        want: `not before the drop at ${dropAtM[k - 1]} m`,
        mend: 'List the drops in their order along the trunk.',
      });
    }
  });
}
