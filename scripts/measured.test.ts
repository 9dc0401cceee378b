import { expect, test } from 'vitest';
import { quantile } from './measured.ts';

test('the nearest-rank quantiles of five samples, by hand', () => {
  // sorted 15 20 35 40 50: of five, 5 % is the 1st, 30 % the 2nd, 40 % the 2nd, 50 % the 3rd, 100 % the 5th
  const samples = [35, 20, 15, 50, 40];
  expect([0.05, 0.3, 0.4, 0.5, 1].map((share) => quantile(samples, share))).toEqual([15, 20, 20, 35, 50]);
});

test('of nothing there is no quantile', () => {
  expect(() => quantile([], 0.5)).toThrow('nothing was measured');
});
