import { expect, test } from 'vitest';
import { dropReach } from './dropReach.ts';

test('trade brief 3.5: pitch 1200 mm over modules 1154 mm apart hangs in slack, no lead is stretched', () => {
  expect(dropReach(Array(8).fill(1154), Array(8).fill(1200))).toEqual(Array(9).fill(0));
});

test('landscape modules 1742 mm apart on a 1350 mm trunk: 392 mm short each, 784 over three units, 392 at each end', () => {
  // offsets −392, 0, +392: half of 2 · 392 at the ends, nothing in the middle
  expect(dropReach([1742, 1742], [1350, 1350])).toEqual([392, 0, 392]);
});

test('slack after a shortfall is used up before it counts again', () => {
  // +100, −300, +100: no sum of neighbours passes 100, so 50 each side of a short span
  expect(dropReach([1300, 900, 1300], [1200, 1200, 1200])).toEqual([50, 50, 50, 50]);
});
