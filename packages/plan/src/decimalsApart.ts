/** Beyond this many decimals two figures differ by the rounding of the machine only. */
const MOST_DECIMALS = 9;

/**
 * Decimals that tell two figures apart when they are written: as many as asked, and more where both would read the
 * same. Limits are judged unrounded, so that 2.004 of 2 with two decimals needs a third. Equal figures need none.
 */
export function decimalsApart(a: number, b: number, asked: number): number {
  let decimals = asked;
  const alike = () => Number(a.toFixed(decimals)) === Number(b.toFixed(decimals));
  while (a !== b && decimals < MOST_DECIMALS && alike()) decimals++;
  return decimals;
}
