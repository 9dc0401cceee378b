/**
 * Root of a continuous function between two points where it changes sign.
 *
 * Ridders' method: like bisection it cannot leave the bracket, like the secant it converges fast.
 *
 * @param f    The function.
 * @param low  One end, with f(low) known as `fLow`.
 * @param high Other end, with f(high) of the opposite sign as `fHigh`.
 * @param tolerance  Absolute, on the argument.
 * @returns The root, or an end where f is already zero.
 * @throws {Error} When the ends do not bracket: that is our mistake, not the reader's.
 *
 * Source: Ridders 1979, IEEE Transactions on Circuits and Systems 26(11), 979.
 */
export function ridders(
  f: (x: number) => number,
  low: number,
  fLow: number,
  high: number,
  fHigh: number,
  tolerance: number,
): number {
  if (fLow === 0) return low;
  if (fHigh === 0) return high;
  if (!(fLow * fHigh < 0)) throw new Error('ridders: the ends do not bracket a root');
  let [a, fa, b, fb] = [low, fLow, high, fHigh];
  let last = Number.POSITIVE_INFINITY;
  for (let turn = 0; turn < 200 && Math.abs(b - a) > tolerance; turn++) {
    const mid = 0.5 * (a + b);
    const fMid = f(mid);
    const root = Math.sqrt(fMid * fMid - fa * fb);
    if (fMid === 0 || root === 0) return mid;
    const x = mid + ((mid - a) * Math.sign(fa - fb) * fMid) / root;
    const fx = f(x);
    if (fx === 0 || Math.abs(x - last) <= tolerance) return x;
    last = x;
    // keep the tightest pair that still brackets
    if (fMid * fx < 0) [a, fa, b, fb] = [mid, fMid, x, fx];
    else if (fa * fx < 0) [b, fb] = [x, fx];
    else [a, fa] = [x, fx];
  }
  return 0.5 * (a + b);
}
