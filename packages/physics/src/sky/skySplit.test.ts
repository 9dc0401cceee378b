import { expect, test } from 'vitest';
import truth from '../../fixtures/sky-split.json' with { type: 'json' };
import { diffuseFractionErbs1982, skySplitErbs1982 } from './skySplit.ts';

test('independent rows: general, capped, low sun, night', () => {
  for (const row of truth.rows) {
    const got = skySplitErbs1982({ ghi: row.ghi, zenithDeg: row.zenith_deg, dayOfYear: row.day_of_year });
    expect(Math.abs(got.kt - row.kt), row.id).toBeLessThan(1e-6);
    expect(Math.abs(got.dni - row.dni), row.id).toBeLessThan(1e-4);
    expect(Math.abs(got.dhi - row.dhi), row.id).toBeLessThan(1e-4);
    if (row.diffuse_fraction === null) expect(got.diffuseFraction, row.id).toBeUndefined();
    else expect(Math.abs((got.diffuseFraction ?? -1) - row.diffuse_fraction), row.id).toBeLessThan(1e-6);
  }
});

test('the three pieces meet where they are split', () => {
  // Erbs et al. fitted them apart: a step of 0.003 at kt 0.22, none worth naming at 0.80
  expect(Math.abs(diffuseFractionErbs1982(0.22) - diffuseFractionErbs1982(0.2200001))).toBeLessThan(0.004);
  expect(Math.abs(diffuseFractionErbs1982(0.8) - diffuseFractionErbs1982(0.8000001))).toBeLessThan(0.002);
});

test('refuses a day 0', () => {
  expect(() => skySplitErbs1982({ ghi: 300, zenithDeg: 40, dayOfYear: 0 })).toThrow('dayOfYear is 0');
});
