/** Memory of clouds from hour to hour. Source: Graham and Hollands 1990 (from memory). */
const HOUR_MEMORY = 0.54;
/** Scatter against the printed one: nearer to published files within the day (0.11 to 0.12 against 0.12 to 0.15). */
const SCATTER = 1.2;

/**
 * Clearness of the hours of a day, given the day's own K: a mean that falls towards the horizon and
 * a scatter that grows there,
 *
 *     k = λ + ε e^{−κ / sin h} + 1.2 σ y,        y ← 0.54 y + √(1 − 0.54²) g
 *     λ = −0.19 + 1.12K + 0.24 e^{−8K}     ε = 0.32 − 1.6(K − 0.5)²     κ = 0.19 + 2.27K² − 2.51K³
 *     σ = 0.14 e^{−20(K − 0.35)²} e^{B(1 − sin h)},     B = 3(K − 0.45)² + 16K⁵
 *
 * A shape only: the caller bends it to the day's total. Values below 0.01 are lifted to it.
 *
 * @param sinElevation  Sine of the sun's height for each hour; hours at or below 0 give 0.
 * @param out           Written from `from` on, one value an hour.
 *
 * Source: Aguiar and Collares-Pereira 1992, Solar Energy 49, 167 (coefficients from memory).
 */
export function hourClearness(
  dayK: number,
  sinElevation: ArrayLike<number>,
  from: number,
  to: number,
  gaussian: () => number,
  out: Float64Array,
): void {
  const lambda = -0.19 + 1.12 * dayK + 0.24 * Math.exp(-8 * dayK);
  const epsilon = 0.32 - 1.6 * (dayK - 0.5) ** 2;
  const kappa = 0.19 + 2.27 * dayK ** 2 - 2.51 * dayK ** 3;
  const spread = 0.14 * Math.exp(-20 * (dayK - 0.35) ** 2);
  const growth = 3 * (dayK - 0.45) ** 2 + 16 * dayK ** 5;
  const fresh = Math.sqrt(1 - HOUR_MEMORY * HOUR_MEMORY);
  let y = gaussian();
  for (let i = from; i < to; i++) {
    const s = sinElevation[i];
    if (!(s > 0)) {
      out[i] = 0;
      continue;
    }
    y = HOUR_MEMORY * y + fresh * gaussian();
    const mean = lambda + epsilon * Math.exp(-kappa / s);
    out[i] = Math.max(0.01, mean + SCATTER * spread * Math.exp(growth * (1 - s)) * y);
  }
}
