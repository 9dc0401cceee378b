import { expect, test } from 'vitest';
import truth from '../../fixtures/incidence-modifier.json' with { type: 'json' };
import { incidenceAverages } from './incidenceAverages.ts';
import { type IncidenceModel, incidenceModifier } from './incidenceModifier.ts';

type Row = (typeof truth.rows)[number];

function modelOf(row: Row): IncidenceModel {
  if (row.model === 'ashrae') return { model: 'ashrae', b: row.b as number };
  if (row.model.startsWith('martin_ruiz')) return { model: 'martin-ruiz', aR: row.a_r as number };
  return {
    model: 'physical',
    n: row.n as number,
    extinctionPerM: row.K_per_m as number,
    thicknessM: row.L_m as number,
    nCoating: row.n_ar ?? undefined,
  };
}

test('independent rows of three curves, with and without a coating', () => {
  const rows = truth.rows.filter((row) => row.aoi_deg !== undefined);
  expect(rows.length).toBeGreaterThan(8);
  for (const row of rows) {
    const got = incidenceModifier(modelOf(row), row.aoi_deg as number);
    expect(Math.abs(got - (row.iam as number)), row.id).toBeLessThan(1e-6); // six decimals printed
  }
});

test('independent averages over sky and ground', () => {
  const rows = truth.rows.filter((row) => row.tilt_deg !== undefined);
  expect(rows.length).toBeGreaterThan(5);
  for (const row of rows) {
    const got = incidenceAverages(modelOf(row), row.tilt_deg as number);
    // both sides integrate; theirs on a grid of 0.125° and printed to five decimals
    expect(Math.abs(got.sky - (row.iam_sky as number)), row.id).toBeLessThan(2e-5);
    if (row.iam_ground === null) expect(got.ground, row.id).toBeUndefined();
    else expect(Math.abs((got.ground ?? -1) - (row.iam_ground as number)), row.id).toBeLessThan(2e-5);
  }
});

test('normal incidence on bare glass by hand', () => {
  // Fresnel at 0°: r = ((1.526 − 1)/(1.526 + 1))² = 0.04336; the modifier divides by that loss, so 1
  expect(incidenceModifier({ model: 'physical' }, 0)).toBe(1);
  expect(incidenceModifier({ model: 'physical' }, 90)).toBe(0);
  // ASHRAE, b 0.05 at 60°: 1 − 0.05 (2 − 1) = 0.95
  expect(incidenceModifier({ model: 'ashrae', b: 0.05 }, 60)).toBeCloseTo(0.95, 12);
});

test('refuses a coefficient of nothing', () => {
  expect(() => incidenceModifier({ model: 'martin-ruiz', aR: 0 }, 30)).toThrow('aR is 0');
  expect(() => incidenceModifier({ model: 'physical', n: 0.9 }, 30)).toThrow('n is 0.9');
});
