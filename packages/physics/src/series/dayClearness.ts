import { within } from '../refusal.ts';

/** Memory of the weather from one day to the next. Source: Graham, Hollands and Brunger 1988 (from memory). */
const DAY_MEMORY = 0.29;

/** How clear the days of a month are: a distribution with a given mean and a clearest day. */
export interface DayClearness {
  /** Clearness that a share u (0 to 1) of days stays below. */
  quantile(u: number): number;
}

/**
 * Distribution of daily clearness K with mean K̄ below an upper end Ku:
 *
 *     density ∝ (1 − K/Ku) e^{γK},  0 ≤ K ≤ Ku
 *
 * With t = K/Ku and g = γKu the mean is (eᵍ(g − 2) + g + 2) / (g(eᵍ − 1 − g)); g is found by bisection.
 *
 * @throws {Refusal} `outside-range` unless 0.02 Ku ≤ K̄ ≤ 0.985 Ku.
 *
 * Deserts have more days near the clear end than this shape gives. Source: Hollands and Huget 1983, Solar Energy 30, 195.
 */
export function dayClearness(mean: number, upper: number): DayClearness {
  const fraction = within(mean / upper, 0.02, 0.985, 'mean / upper', 'A month is neither black nor without a cloud.');
  const g = exponentFor(fraction);
  // scaled by e^−max(g, 0), so that nothing overflows
  const scale = Math.exp(-Math.max(g, 0));
  const start = (1 + 1 / g) * scale;
  const whole = Math.exp(g - Math.max(g, 0)) / g - start;
  const share = (t: number) => (Math.exp(g * t - Math.max(g, 0)) * (1 - t + 1 / g) - start) / whole;
  return { quantile: (u) => upper * bisect(0, 1, 50, (t) => share(t) < u) };
}

/** Mean of t in the density (1 − t) e^{gt} on 0 to 1. */
function meanFor(g: number): number {
  if (Math.abs(g) < 0.01) return 1 / 3 + g / 18; // next term g²/270·…: below 1e-6
  const shrink = Math.exp(-Math.abs(g));
  const up = g > 0 ? 1 : shrink;
  const one = g > 0 ? shrink : 1;
  return (up * (g - 2) + one * (g + 2)) / (g * (up - one * (1 + g)));
}

function exponentFor(fraction: number): number {
  const g = bisect(-200, 200, 80, (trial) => meanFor(trial) < fraction);
  return Math.abs(g) < 1e-3 ? 1e-3 : g; // at 0 the closed forms divide by it; a thousandth moves the mean by 6e-5
}

/** Point where `below` changes from true to false. */
function bisect(low: number, high: number, steps: number, below: (x: number) => boolean): number {
  let [a, b] = [low, high];
  for (let k = 0; k < steps; k++) {
    const middle = (a + b) / 2;
    if (below(middle)) a = middle;
    else b = middle;
  }
  return (a + b) / 2;
}

/** The next value of the chain behind the days: normal, mean 0, deviation 1, remembering the last. */
export function nextDay(last: number, gaussian: () => number): number {
  return DAY_MEMORY * last + Math.sqrt(1 - DAY_MEMORY * DAY_MEMORY) * gaussian();
}

/** Share of a normal variable below x. Error up to 1.5e-7. Source: Abramowitz and Stegun 1964, 7.1.26. */
export function normalShare(x: number): number {
  const z = Math.abs(x) / Math.SQRT2;
  const t = 1 / (1 + 0.3275911 * z);
  const poly = t * (0.254829592 + t * (-0.284496736 + t * (1.421413741 + t * (-1.453152027 + t * 1.061405429))));
  const upper = 0.5 * poly * Math.exp(-z * z);
  return x < 0 ? upper : 1 - upper;
}
