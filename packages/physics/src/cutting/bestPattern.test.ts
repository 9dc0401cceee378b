import { expect, test } from 'vitest';
import { bestPattern } from './bestPattern.ts';

const plenty = () => ({ left: 1e9 });

test('by hand: a bar of 10 takes 6 + 4, not the dense 7', () => {
  // worth a step: 7 → 9/7, 6 → 7/6, 4 → 4.5/4; 7 leaves 3 empty (9), 6 + 4 is worth 11.5, 4 + 4 is worth 9
  const bar = { capacity: 10, weights: [7, 6, 4], demand: [1, 2, 2] };
  const got = bestPattern(bar, [9, 7, 4.5], 0, plenty());
  expect(got).toEqual({ value: 11.5, pattern: { classes: expect.arrayContaining([1, 2]), counts: [1, 1] } });
  // nothing above the floor: the floor, and no pattern
  expect(bestPattern(bar, [9, 7, 4.5], 11.5, plenty())).toEqual({ value: 11.5 });
  // the demand binds: with one 4 only, two 6 do not fit, so still 6 + 4; without any 6, the 7
  expect(bestPattern({ ...bar, demand: [1, 0, 1] }, [9, 7, 4.5], 0, plenty())?.value).toBe(9);
});

test('says nothing when the effort ends first', () => {
  const bar = { capacity: 100, weights: [9, 8, 7, 6, 5], demand: [9, 9, 9, 9, 9] };
  expect(bestPattern(bar, [9.1, 8.3, 7.2, 6.4, 5.1], 0, { left: 3 })).toBeUndefined();
});

test('slow twin: every filling tried, 300 seeded bars', () => {
  let seed = 11;
  const random = (below: number) => {
    seed = (seed * 1103515245 + 12345) % 2147483648;
    return Math.floor((seed / 2147483648) * below);
  };
  for (let round = 0; round < 300; round++) {
    const weights = Array.from({ length: 1 + random(6) }, () => 1 + random(30));
    const demand = weights.map(() => random(4));
    const worths = weights.map(() => random(40));
    const capacity = 30 + random(40);
    const most = (k: number, room: number): number => {
      if (k === weights.length) return 0;
      let best = 0;
      for (let n = 0; n <= demand[k] && n * weights[k] <= room; n++) {
        best = Math.max(best, n * worths[k] + most(k + 1, room - n * weights[k]));
      }
      return best;
    };
    const got = bestPattern({ capacity, weights, demand }, worths, 0, plenty());
    expect(got?.value).toBe(most(0, capacity));
    const { classes, counts } = got?.pattern ?? { classes: [], counts: [] };
    expect(classes.reduce((sum, k, at) => sum + worths[k] * counts[at], 0)).toBe(got?.value);
    expect(classes.reduce((sum, k, at) => sum + weights[k] * counts[at], 0)).toBeLessThanOrEqual(capacity);
    expect(classes.every((k, at) => counts[at] <= demand[k])).toBe(true);
  }
});
