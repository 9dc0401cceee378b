import { expect, test } from 'vitest';
import { layFeet, OVERHANG_SHARE } from './layFeet.ts';

const at = (first: number, spacing: number, count: number) =>
  Array.from({ length: count }, (_, k) => first + k * spacing);
const places = (laid: ReturnType<typeof layFeet>) => laid.feet.map(({ u }) => Math.round(u * 1000) / 1000);

/** Every choice of feet tried: the least count that keeps spacing and overhang, or nothing. */
function leastByTrying(fromU: number, toU: number, spacingM: number, rafters: readonly number[]): number | undefined {
  const under = rafters.filter((u) => u >= fromU - 1e-9 && u <= toU + 1e-9);
  let least: number | undefined;
  for (let mask = 0; mask < 2 ** under.length; mask++) {
    const feet = under.filter((_, k) => mask & (1 << k));
    if (feet.length < 2) continue;
    const spans = feet.slice(1).map((u, k) => u - (feet[k] as number));
    const firstOk = (feet[0] as number) - fromU <= OVERHANG_SHARE * (spans[0] as number) + 1e-9;
    const lastOk = toU - (feet.at(-1) as number) <= OVERHANG_SHARE * (spans.at(-1) as number) + 1e-9;
    const spansOk = spans.every((span) => span <= spacingM + 1e-9);
    if (firstOk && lastOk && spansOk) least = Math.min(least ?? Number.POSITIVE_INFINITY, feet.length);
  }
  return least;
}

test('a rail of 5 m over rafters every 0.6 m with feet at most 1.2 m apart: five feet, four spans', () => {
  // rail 0.1 … 5.1: overhangs of at most 1.2/3 = 0.4 m leave (5 − 2·0.4)/1.2 = 3.5 spans, so 4: 0.3, 1.5, 2.7, 3.9, 5.1
  const laid = layFeet(0.1, 5.1, 1.2, at(0.3, 0.6, 18));
  expect(laid).toMatchObject({ onRafters: true, keepsLimits: true });
  expect(places(laid)).toEqual([0.3, 1.5, 2.7, 3.9, 5.1]);
  expect(laid.feet.map(({ rafter }) => rafter)).toEqual([1, 3, 5, 7, 9]);
});

test('0.1 m shorter, no rafter stands near enough to the right end: the overhang is 0.5 m and it says so', () => {
  // the last rafter under the rail stands at 4.5: 0.5 m of overhang, more than 1.2/3
  const laid = layFeet(0.1, 5, 1.2, at(0.3, 0.6, 18));
  expect(laid.keepsLimits).toBe(false);
  expect(laid.feet).toHaveLength(5);
  expect(laid.feet.at(-1)).toMatchObject({ rafter: 8 });
});

test('an overhang longer than a third of its span moves the first foot outward', () => {
  // rail 0 … 3: feet at 0.5 and 2.5 would hang over 0.5 > 2.0/3 = 0.667? no: 0.5 ≤ 0.667, so two feet hold
  expect(places(layFeet(0, 3, 2, at(0.5, 0.5, 5)))).toEqual([0.5, 2.5]);
  // with at most 1.4 m: 0.5 hangs over 0.5 > 1.4/3 = 0.467 from any first span, and there is no rafter before it
  const laid = layFeet(0, 3, 1.4, at(0.5, 0.5, 5));
  expect(laid.keepsLimits).toBe(false);
  expect(places(laid)[0]).toBe(0.5);
  expect(places(laid).at(-1)).toBe(2.5);
});

test('rafters farther apart than the feet may be: a foot on every rafter, and it says that the spacing is not kept', () => {
  const laid = layFeet(0, 4, 0.8, at(0.2, 0.9, 5));
  expect(laid).toMatchObject({ onRafters: true, keepsLimits: false });
  expect(laid.feet).toHaveLength(5);
});

test('where no rafter is known the feet are even and stand on none', () => {
  // 8.158 m at 1.2 m: n spans with n + ⅔ ≥ 6.798, so 7 spans; 8.158/7.5 = 1.0877 m, a quarter overhang of 0.2719 m…
  const laid = layFeet(0, 8.158, 1.2);
  expect(laid.onRafters).toBe(false);
  expect(laid.feet).toHaveLength(8);
  expect(laid.feet[0]?.u).toBeCloseTo(0.2719, 4);
  expect((laid.feet[1]?.u ?? 0) - (laid.feet[0]?.u ?? 0)).toBeCloseTo(1.0877, 4);
  expect(laid.feet.every(({ rafter }) => rafter === undefined)).toBe(true);
});

test('never more feet than the best of all choices, on 300 rails of up to 12 rafters', () => {
  // seeded steps of a linear congruential generator (Numerical Recipes, from memory)
  let seed = 7;
  const next = () => {
    seed = (1664525 * seed + 1013904223) >>> 0;
    return seed / 2 ** 32;
  };
  let solved = 0;
  for (let n = 0; n < 300; n++) {
    const rafters = at(next() * 0.6, 0.35 + next() * 0.4, 4 + Math.floor(next() * 9));
    const toU = 0.1 + (rafters.at(-1) as number) * (0.7 + 0.35 * next());
    const spacingM = 0.7 + next();
    const laid = layFeet(0.1, toU, spacingM, rafters);
    const least = leastByTrying(0.1, toU, spacingM, rafters);
    expect(laid.keepsLimits, `rail ${n}`).toBe(least !== undefined);
    if (least !== undefined) {
      expect(laid.feet.length, `rail ${n}`).toBe(least);
      solved++;
    }
  }
  expect(solved).toBeGreaterThan(100);
});
