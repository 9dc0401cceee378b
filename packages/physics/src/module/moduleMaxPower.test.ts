import { expect, test } from 'vitest';
import truth from '../../fixtures/module-iv.json' with { type: 'json' };
import { type ModuleModel, moduleAt } from './diode.ts';
import { moduleCurrentAt, moduleOpenCircuitV } from './moduleCurrent.ts';
import { moduleMaxPower, modulePoints, modulePowerInWindow, modulePowerLinear2014 } from './moduleMaxPower.ts';
import { modulePowerFromTable, modulePowerTable, moduleVoltageFromTable } from './modulePowerTable.ts';

function modelOf(name: string): ModuleModel {
  const row = truth.modules.find((m) => m.module === name);
  if (!row) throw new Error(`no module ${name} in the fixture`);
  const p = row.five_parameters;
  return {
    photoCurrentA: p.I_L_ref_a,
    saturationCurrentA: p.I_o_ref_a,
    seriesOhm: p.R_s_ohm,
    shuntSiemens: 1 / p.R_sh_ref_ohm,
    idealityV: p.a_ref_v,
    alphaIscAPerK: row.alpha_isc_a_per_k,
  };
}

test('independent points of four modules, cold, hot and dim, to the digits they print', () => {
  for (const row of truth.rows) {
    const got = modulePoints(modelOf(row.module), row.irradiance, row.cell_c);
    // six decimals printed, from parameters of ten digits
    for (const [value, want] of [
      [got.iSc, row.i_sc],
      [got.vOc, row.v_oc],
      [got.iMp, row.i_mp],
      [got.vMp, row.v_mp],
      [got.pMp, row.p_mp],
      [got.iAtHalfVoc, row.i_at_half_voc],
    ] as const) {
      expect(Math.abs(value - want), row.id).toBeLessThan(1e-6);
    }
  }
});

test('no neighbour on the curve is better, from dawn to snow-bright cold', () => {
  for (const irradiance of [0.5, 3, 40, 300, 1400]) {
    for (const cellC of [-30, 20, 90]) {
      const state = moduleAt(modelOf('E'), irradiance, cellC);
      const best = moduleMaxPower(state);
      expect(moduleCurrentAt(state, best.voltageV)).toBeCloseTo(best.currentA, 10);
      for (const nearby of [0.995, 1.005]) {
        const v = best.voltageV * nearby;
        expect(v * moduleCurrentAt(state, v)).toBeLessThan(best.powerW);
      }
    }
  }
});

test('the dark gives nothing, and no NaN', () => {
  const dark = moduleAt(modelOf('A'), 0, 10);
  expect(moduleMaxPower(dark)).toEqual({ powerW: 0, voltageV: 0, currentA: 0 });
  expect(moduleOpenCircuitV(dark)).toBe(0);
  expect(moduleCurrentAt(dark, 0)).toBeCloseTo(0, 12);
});

test('current against voltage obeys its own equation, far outside the useful range too', () => {
  const state = moduleAt(modelOf('A'), 800, 45);
  for (const v of [-10, 0, 20, 38, 42, 80]) {
    const i = moduleCurrentAt(state, v);
    const diode = v + i * state.seriesOhm;
    const expected =
      state.photoA - state.saturationA * Math.expm1(diode / state.idealityV) - diode * state.shuntSiemens;
    expect(Math.abs(i - expected)).toBeLessThan(1e-9 * Math.max(1, Math.abs(i)));
  }
});

test('a window above the optimum holds the module at its edge', () => {
  const state = moduleAt(modelOf('A'), 1000, 75); // best at 28.59 V, open at 35.50 V
  const held = modulePowerInWindow(state, 30, 45);
  expect(held.held).toBe('low');
  expect(held.voltageV).toBe(30);
  expect(held.powerW).toBeCloseTo(30 * moduleCurrentAt(state, 30), 9);
  expect(held.powerW).toBeLessThan(314.66);
  expect(modulePowerInWindow(state, 16, 45).held).toBe('free');
  expect(modulePowerInWindow(state, 16, 25).held).toBe('high');
  expect(modulePowerInWindow(state, 36, 60)).toEqual({ powerW: 0, voltageV: 0, currentA: 0, held: 'off' });
  expect(() => modulePowerInWindow(state, 30, 30)).toThrow('highV is 30');
});

test('the table keeps to the exact power', () => {
  const model = modelOf('A');
  const table = modulePowerTable(model);
  let [exactWh, tableWh] = [0, 0];
  for (let k = 0; k < 4000; k++) {
    const irradiance = 1200 * Math.sin((k * Math.PI) / 4000) ** 2;
    const cellC = -15 + 80 * ((k * 0.618034) % 1);
    const exact = moduleMaxPower(moduleAt(model, irradiance, cellC));
    const fast = modulePowerFromTable(table, irradiance, cellC);
    expect(Math.abs(fast - exact.powerW)).toBeLessThan(0.003); // 2.5 mW at the brightest cold corner
    if (irradiance > 20)
      expect(Math.abs(moduleVoltageFromTable(table, irradiance, cellC) - exact.voltageV)).toBeLessThan(0.02);
    exactWh += exact.powerW;
    tableWh += fast;
  }
  expect(Math.abs(tableWh / exactWh - 1)).toBeLessThan(1e-5);
  expect(modulePowerFromTable(table, 0, 20)).toBe(0);
  expect(modulePowerFromTable(table, -3, 20)).toBe(0);
});

test('the linear model by hand: 400 W, −0.35 %/K, 800 W/m², 45 °C', () => {
  // 400 · 0.8 · (1 − 0.0035 · 20) = 320 · 0.93 = 297.6 W
  expect(modulePowerLinear2014(400, -0.0035, 800, 45)).toBeCloseTo(297.6, 9);
  expect(() => modulePowerLinear2014(400, -0.35, 800, 45)).toThrow('gammaPerK is -0.35');
});
