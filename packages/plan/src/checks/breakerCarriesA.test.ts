import { expect, test } from 'vitest';
import { rulePacks } from '../rules/index.ts';
import { breakerCarriesA } from './breakerCarriesA.ts';

test('the smaller of the sheet’s share and what the region’s factor leaves; all of it where made for continuous duty', () => {
  // United States, factor 1.25: a sheet that says 0.9 still leaves 20 A ÷ 1.25 = 16 A
  expect(breakerCarriesA({ ratedA: 20, continuousShare: 0.9 }, rulePacks.us)).toBeCloseTo(16, 9);
  expect(breakerCarriesA({ ratedA: 20, continuousShare: 0.7 }, rulePacks.us)).toBeCloseTo(14, 9);
  expect(breakerCarriesA({ ratedA: 20, continuousShare: 1 }, rulePacks.us)).toBe(20);
  // Australia, factor 1: what the sheet says
  expect(breakerCarriesA({ ratedA: 20, continuousShare: 0.9 }, rulePacks.au)).toBeCloseTo(18, 9);
});
