/** A chance in whole hundredths, never rounded up: 0.9575 is 95, and only what is certain is 100. */
export function hundredths(chance: number): number {
  return Math.floor(chance * 100 + 1e-9);
}
