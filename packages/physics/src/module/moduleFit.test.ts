import { expect, test } from 'vitest';
import truth from '../../fixtures/module-iv.json' with { type: 'json' };
import { type ModuleModel, moduleAt } from './diode.ts';
import { moduleCurrentAt, moduleOpenCircuitV } from './moduleCurrent.ts';
import { moduleFit } from './moduleFit.ts';
import { modulePoints } from './moduleMaxPower.ts';
import type { ModuleSheet } from './moduleSheet.ts';

function sheetOf(row: (typeof truth.modules)[number]): ModuleSheet {
  const { datasheet } = row;
  return {
    vOcV: datasheet.v_oc_v,
    iScA: datasheet.i_sc_a,
    vMpV: datasheet.v_mp_v,
    iMpA: datasheet.i_mp_a,
    pMpW: datasheet.p_mp_w,
    alphaIscAPerK: row.alpha_isc_a_per_k,
    betaVocVPerK: row.beta_voc_v_per_k,
    cellsInSeries: datasheet.cells_in_series,
  };
}
/** 54 cells in series, two strings side by side. */
const halfCut = sheetOf(truth.modules[1] as (typeof truth.modules)[number]);
const relative = (got: number, want: number): number => Math.abs(got / want - 1);

test('six sheets give the five parameters of an independent solution', () => {
  for (const row of truth.modules) {
    const fit = moduleFit(sheetOf(row));
    const want = row.five_parameters;
    // ten digits printed; the file allows 1e-4
    expect(relative(fit.model.photoCurrentA, want.I_L_ref_a), row.module).toBeLessThan(1e-9);
    expect(relative(fit.model.saturationCurrentA, want.I_o_ref_a), row.module).toBeLessThan(1e-9);
    expect(relative(fit.model.seriesOhm, want.R_s_ohm), row.module).toBeLessThan(1e-9);
    expect(relative(1 / fit.model.shuntSiemens, want.R_sh_ref_ohm), row.module).toBeLessThan(1e-9);
    expect(relative(fit.model.idealityV, want.a_ref_v), row.module).toBeLessThan(1e-9);
    expect(fit.method).toBe('five-equations');
    expect(Math.abs(100 * fit.gammaPmpPerK - row.model_gamma_pmp_pct_per_k_at_stc), row.module).toBeLessThan(1e-4);
  }
});

test('the model gives its own sheet back: three points, a flat top, β at 27 °C', () => {
  const { model } = moduleFit(halfCut);
  const points = modulePoints(model, 1000, 25);
  expect(points.iSc).toBeCloseTo(14.05, 9);
  expect(points.vOc).toBeCloseTo(38.7, 9);
  expect(points.vMp).toBeCloseTo(32.3, 6);
  expect(points.iMp).toBeCloseTo(13.32, 6);
  const warmV = moduleOpenCircuitV(moduleAt(model, 1000, 27));
  expect((warmV - 38.7) / 2).toBeCloseTo(-0.09675, 9);
});

test('sheets made from known parameters come back, whatever the cell', () => {
  let state = 11;
  const roll = (low: number, high: number): number => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return low + ((high - low) * state) / 2 ** 32;
  };
  for (let k = 0; k < 200; k++) {
    const cells = Math.floor(roll(36, 105));
    const idealityV = roll(0.85, 1.45) * cells * 8.617333262e-5 * 298.15;
    const [voc, il] = [cells * roll(0.62, 0.73), roll(4, 16)];
    const shuntSiemens = il / voc / roll(10, 400);
    const saturationCurrentA = (il - shuntSiemens * voc) / Math.expm1(voc / idealityV);
    const seriesOhm = (voc / il) * roll(0.005, 0.035);
    const made: ModuleModel = {
      ...{ photoCurrentA: il, saturationCurrentA, seriesOhm, shuntSiemens, idealityV },
      alphaIscAPerK: il * 0.0005,
    };
    const points = modulePoints(made, 1000, 25);
    const { model } = moduleFit({
      ...{ vOcV: points.vOc, iScA: points.iSc, vMpV: points.vMp, iMpA: points.iMp, cellsInSeries: cells },
      alphaIscAPerK: made.alphaIscAPerK,
      betaVocVPerK: (moduleOpenCircuitV(moduleAt(made, 1000, 27)) - points.vOc) / 2,
    });
    // the prototype of this method allowed 1e-5; a nearly vanishing shunt is the worst of them
    expect(relative(model.idealityV, idealityV)).toBeLessThan(1e-6);
    expect(relative(model.seriesOhm, seriesOhm)).toBeLessThan(1e-6);
    expect(relative(model.shuntSiemens, shuntSiemens)).toBeLessThan(1e-4);
  }
});

test('a sheet too square for its β loses the shunt and says by how much β is off', () => {
  const square = { ...sheetOf(truth.modules[0] as (typeof truth.modules)[number]), iMpA: 11.1, pMpW: 381.84 };
  const fit = moduleFit(square);
  expect(fit.method).toBe('no-shunt');
  expect(fit.model.shuntSiemens).toBe(0);
  expect(fit.shuntRatio).toBeUndefined();
  // the point and its flat top still hold; β, dropped, comes out weaker than the sheet's −0.11097 V/K
  const state = moduleAt(fit.model, 1000, 25);
  const at = (v: number): number => v * moduleCurrentAt(state, v);
  expect(moduleCurrentAt(state, 34.4)).toBeCloseTo(11.1, 8);
  expect((at(34.41) - at(34.39)) / 0.02).toBeCloseTo(0, 3);
  expect(fit.betaVocVPerK - square.betaVocVPerK).toBeGreaterThan(0.002);
});

test('refuses the whole count of a half-cut module and offers the half', () => {
  expect(() => moduleFit({ ...halfCut, cellsInSeries: 108 })).toThrow(
    'cellsInSeries is 108; it has to be such that the ideality of a cell is 0.8 to 1.6, not 0.49. 54 would give 0.97',
  );
  expect(() => moduleFit({ ...halfCut, cellsInSeries: 27 })).toThrow('54 would give 0.97');
});

test('refuses impossible sheets, naming the line', () => {
  const without = { ...halfCut };
  delete (without as { pMpW?: number }).pMpW;
  expect(() => moduleFit({ ...halfCut, vOcV: 32 })).toThrow('vOcV is 32; it has to be above vMpV');
  expect(() => moduleFit({ ...halfCut, iScA: 13 })).toThrow('iScA is 13; it has to be above iMpA');
  expect(() => moduleFit({ ...halfCut, pMpW: 440 })).toThrow('pMpW is 440; it has to be within 1 %');
  expect(() => moduleFit({ ...halfCut, betaVocVPerK: 0.09 })).toThrow('betaVocVPerK is 0.09');
  expect(() => moduleFit({ ...halfCut, betaVocVPerK: -0.25e2 })).toThrow('betaVocVPerK is -25');
  expect(() => moduleFit({ ...halfCut, iMpA: 0 })).toThrow('iMpA is 0');
  // fill factor 0.90: squarer than any diode of 54 cells at 38.7 V
  expect(() => moduleFit({ ...without, vMpV: 36, iMpA: 13.6 })).toThrow('fill factor is 0.9');
});
