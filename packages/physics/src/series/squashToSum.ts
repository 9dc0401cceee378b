import { Refusal } from '../refusal.ts';

/**
 * Bends values below their ceilings until they sum to a target, without clipping any:
 *
 *     x → c·x·f / (c − x + x·f)
 *
 * It leaves 0 at 0 and c at c, keeps the order of x/c, and rises with f; f > 0 is found by
 * bisection on its logarithm. A plain factor would break the ceiling on clear hours.
 *
 * @param values    0 ≤ x < c; changed in place. Entries with ceiling 0 stay 0.
 * @param ceilings  c ≥ 0.
 * @param from, to  Part of the arrays, `to` not included.
 * @param target    0 ≤ target < Σ c over the part.
 * @throws {Refusal} `no-solution` when the target is not below the ceilings' sum, or every value is 0.
 */
export function squashToSum(
  values: Float64Array,
  ceilings: Float64Array,
  from: number,
  to: number,
  target: number,
): void {
  if (target === 0) {
    values.fill(0, from, to);
    return;
  }
  let most = 0;
  for (let i = from; i < to; i++) if (values[i] > 0) most += ceilings[i];
  if (!(target > 0 && target < most)) {
    throw new Refusal({
      code: 'no-solution',
      at: 'target',
      got: target,
      want: `0 to less than the ceilings, ${most}`,
      mend: 'Raise the ceilings or lower the target.',
    });
  }
  let low = -60;
  let high = 60;
  for (let k = 0; k < 100 && high - low > 1e-15 * Math.abs(low + high); k++) {
    const middle = (low + high) / 2;
    if (squashedSum(values, ceilings, from, to, Math.exp(middle)) < target) low = middle;
    else high = middle;
  }
  const f = Math.exp((low + high) / 2);
  let sum = 0;
  for (let i = from; i < to; i++) {
    values[i] = squashed(values[i], ceilings[i], f);
    sum += values[i];
  }
  // what bisection leaves is rounding; a factor within 1e-12 of 1 moves no value to its ceiling
  const rest = target / sum;
  for (let i = from; i < to; i++) values[i] = Math.min(ceilings[i], values[i] * rest);
}

function squashed(x: number, c: number, f: number): number {
  return x > 0 ? (c * x * f) / (c - x + x * f) : 0;
}

function squashedSum(values: Float64Array, ceilings: Float64Array, from: number, to: number, f: number): number {
  let sum = 0;
  for (let i = from; i < to; i++) sum += squashed(values[i], ceilings[i], f);
  return sum;
}
