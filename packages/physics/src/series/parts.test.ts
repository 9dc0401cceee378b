import { expect, test } from 'vitest';
import { dayCurve, daysFromMonths } from './airTemperatureYear.ts';
import { MONTH_DAYS, MONTH_OF_DAY, MONTH_STARTS } from './calendarYear.ts';
import { dayClearness, normalShare } from './dayClearness.ts';
import { seededRandom } from './seededRandom.ts';
import { squashToSum } from './squashToSum.ts';

test('the generator: even, normal, and its own for each seed', () => {
  const n = 200_000;
  const random = seededRandom(12345);
  const uniform = Array.from({ length: n }, () => random.uniform());
  const normal = Array.from({ length: n }, () => random.gaussian());
  const mean = (values: number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;
  // five standard errors: 1/√12n for the mean of even numbers, 1/√n and √(2/n) for normal ones
  expect(Math.abs(mean(uniform) - 0.5)).toBeLessThan(5 / Math.sqrt(12 * n));
  expect(Math.abs(mean(normal))).toBeLessThan(5 / Math.sqrt(n));
  expect(Math.abs(mean(normal.map((x) => x * x)) - 1)).toBeLessThan(5 * Math.sqrt(2 / n));
  // no memory: lag-1 product of normal numbers has deviation 1/√n
  expect(Math.abs(mean(normal.slice(1).map((x, i) => x * normal[i])))).toBeLessThan(5 / Math.sqrt(n));
  expect(Math.min(...uniform.slice(0, 10_000))).toBeGreaterThan(0);
  const first = [0, 1, 2, 2 ** 32, 2 ** 33].map((seed) => seededRandom(seed).uniform());
  expect(new Set(first).size).toBe(5);
});

test('the normal share, from tables', () => {
  // Abramowitz and Stegun, table 26.1: P(1) = 0.841344746, P(1.96) = 0.975002105
  expect(normalShare(0)).toBeCloseTo(0.5, 6);
  expect(normalShare(1)).toBeCloseTo(0.841344746, 6);
  expect(normalShare(-1.96)).toBeCloseTo(1 - 0.975002105, 6);
});

test('squash, worked by hand', () => {
  // x = 1 and 2 under ceilings 4 and 4, target 5: f = x'(c − x)/(x(c − x'))
  // try f = 3: 4·1·3/(3 + 3) = 2 and 4·2·3/(2 + 6) = 3, sum 5
  const values = Float64Array.of(0, 1, 2);
  squashToSum(values, Float64Array.of(4, 4, 4), 0, 3, 5);
  expect(values[0]).toBe(0);
  expect(values[1]).toBeCloseTo(2, 12);
  expect(values[2]).toBeCloseTo(3, 12);
});

test('squash: the sum is exact, the order of x/c stays and no ceiling is passed', () => {
  const random = seededRandom(7);
  for (let trial = 0; trial < 200; trial++) {
    const ceilings = Float64Array.from({ length: 12 }, () => 100 * random.uniform());
    const values = ceilings.map((c) => c * random.uniform());
    const shares = values.map((x, i) => x / ceilings[i]);
    const target = ceilings.reduce((a, b) => a + b, 0) * (0.002 + 0.996 * random.uniform());
    squashToSum(values, ceilings, 0, 12, target);
    expect(Math.abs(values.reduce((a, b) => a + b, 0) / target - 1)).toBeLessThan(1e-12);
    for (let i = 0; i < 12; i++) {
      expect(values[i]).toBeLessThanOrEqual(ceilings[i]);
      for (let j = 0; j < 12; j++) {
        if (shares[i] < shares[j]) expect(values[i] / ceilings[i]).toBeLessThanOrEqual(values[j] / ceilings[j] + 1e-12);
      }
    }
  }
  expect(() => squashToSum(Float64Array.of(1), Float64Array.of(2), 0, 1, 2)).toThrow('it has to be 0 to less than');
});

test.each([0.1, 0.25, 1 / 3, 0.5, 0.7, 0.9, 0.97])(
  'days of mean clearness %d of the clearest have that mean',
  (part) => {
    const { quantile } = dayClearness(part * 0.75, 0.75);
    // the mean of a quantile function over an even grid is the mean of the distribution
    const n = 4000;
    let sum = 0;
    for (let k = 0; k < n; k++) sum += quantile((k + 0.5) / n);
    expect(Math.abs(sum / n / 0.75 - part)).toBeLessThan(2e-4);
    expect(quantile(0.2)).toBeLessThan(quantile(0.8));
    expect(quantile(1)).toBeLessThanOrEqual(0.75);
  },
);

test('with the exponent at 0 the days follow a falling line: the median is 1 − √½', () => {
  // density 2(1 − t) on 0 to 1, mean 1/3: share below t is 1 − (1 − t)²
  expect(dayClearness(1 / 3, 1).quantile(0.5)).toBeCloseTo(1 - Math.SQRT1_2, 3);
});

test('lines through months have the months’ means', () => {
  const means = [25, 24, 21, 16, 12, 9, 8, 10, 13, 17, 20, 23];
  const days = daysFromMonths(means);
  for (let m = 0; m < 12; m++) {
    const part = days.subarray(MONTH_STARTS[m], MONTH_STARTS[m + 1]);
    expect(Math.abs(part.reduce((a, b) => a + b, 0) / MONTH_DAYS[m] - means[m])).toBeLessThan(1e-10);
  }
  // no step at the turn of a month or of the year: a day moves no more than the steepest line, 5 K in 30 days, doubled
  for (let d = 0; d < 365; d++) expect(Math.abs(days[(d + 1) % 365] - days[d])).toBeLessThan(0.35);
  expect(MONTH_OF_DAY[58]).toBe(1); // 28 February
});

test('the daily curve sums to nothing and is highest after noon', () => {
  const hours = Array.from({ length: 24 }, (_, h) => dayCurve(h + 1));
  expect(Math.abs(hours.reduce((a, b) => a + b, 0))).toBeLessThan(1e-12);
  expect(hours.indexOf(Math.max(...hours)) + 1).toBe(15);
  expect(Math.max(...hours) - Math.min(...hours)).toBeCloseTo(1, 1);
});
