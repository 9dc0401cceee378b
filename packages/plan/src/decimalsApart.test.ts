import { expect, test } from 'vitest';
import { decimalsApart } from './decimalsApart.ts';

test('decimals that tell two figures apart, by hand', () => {
  expect(decimalsApart(5.32, 4.6, 2)).toBe(2);
  // 2.00 and 2.00, then 2.004 and 2.000
  expect(decimalsApart(2.004, 2, 2)).toBe(3);
  // 4.60 on both, and on both with three; 4.6004 and 4.6000
  expect(decimalsApart(4.6004, 4.6, 2)).toBe(4);
  // −0.00 and 0.00 read the same
  expect(decimalsApart(-0.004, 0.004, 2)).toBe(3);
});

test('figures that are equal, or differ in the last bits only, do not run on', () => {
  expect(decimalsApart(2, 2, 1)).toBe(1);
  expect(decimalsApart(0.1 + 0.2, 0.3, 1)).toBe(9);
});
