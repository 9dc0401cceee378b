import { expect, test } from 'vitest';
import truth from '../../fixtures/cell-temperature.json' with { type: 'json' };
import {
  cellTemperatureFaiman2008,
  cellTemperatureNoct,
  cellTemperatureNoctBalance,
  cellTemperatureRoss1980,
  cellTemperatureSandia2004,
  sandiaMountings,
} from './cellTemperature.ts';
import { cellTemperatureSeries } from './cellTemperatureSeries.ts';

type Row = (typeof truth.rows)[number];
const given = (value: number | undefined): number => value as number;

function cellC(row: Row): number {
  const air = { poa: row.poa, airC: row.air_c };
  const windMS = given(row.wind_m_s);
  switch (row.model) {
    case 'faiman':
      return cellTemperatureFaiman2008({ ...air, windMS, u0: given(row.u0), u1: given(row.u1) });
    case 'noct_linear':
      return cellTemperatureNoct({ ...air, noctC: given(row.noct_c) });
    case 'ross_k':
      return cellTemperatureRoss1980({ ...air, kKM2PerW: given(row.k_k_m2_per_w) });
    case 'noct_energy_balance': {
      const sheet = { noctC: given(row.noct_c), moduleEfficiency: given(row.module_efficiency) };
      return cellTemperatureNoctBalance({ ...air, windMS, ...sheet, tauAlpha: given(row.tau_alpha) });
    }
    default: {
      const mounting = { a: given(row.a), b: given(row.b), deltaTC: given(row.delta_t_c) };
      const got = cellTemperatureSandia2004({ ...air, windMS, ...mounting });
      expect(Math.abs(got.moduleBackC - given(row.module_back_c)), row.id).toBeLessThan(1e-5);
      return got.cellC;
    }
  }
}

test('independent rows of five models, to the five decimals they print', () => {
  for (const row of truth.rows) expect(Math.abs(cellC(row) - row.temp_c), row.id).toBeLessThan(1e-5);
});

test('at the nominal point both rules of the sheet give the nominal temperature', () => {
  // 800 W/m², 20 °C, 1 m/s; with no power taken off the balance has nothing to subtract
  const nominal = { poa: 800, airC: 20, noctC: 45 };
  expect(cellTemperatureNoct(nominal)).toBeCloseTo(45, 12);
  expect(cellTemperatureNoctBalance({ ...nominal, windMS: 1, moduleEfficiency: 0 })).toBeCloseTo(45, 12);
});

test('an open rack by hand: 1000 W/m², 25 °C, 1 m/s', () => {
  // exp(−3.56 − 0.075) = 0.026385; back 25 + 26.385, cell 3 K above
  const got = cellTemperatureSandia2004({
    poa: 1000,
    airC: 25,
    windMS: 1,
    ...sandiaMountings['glass-polymer-open-rack'],
  });
  expect(got.moduleBackC).toBeCloseTo(51.385, 2);
  expect(got.cellC).toBeCloseTo(54.385, 2);
});

test('the series is the single instant, and a night adds nothing', () => {
  const into = cellTemperatureSeries([0, 812.5], [-3, 21.25], [4, 2.5], { u0: 25, u1: 6.84 });
  expect(into[0]).toBe(-3);
  expect(into[1]).toBeCloseTo(cellTemperatureFaiman2008({ poa: 812.5, airC: 21.25, windMS: 2.5 }), 12);
  expect(() => cellTemperatureSeries([0, 1], [5], [1, 1], { u0: 25, u1: 6.84 })).toThrow('airC.length is 1');
});

test('refuses negative wind and a nominal temperature below the air it was measured in', () => {
  expect(() => cellTemperatureFaiman2008({ poa: 800, airC: 20, windMS: -1 })).toThrow('windMS is -1');
  expect(() => cellTemperatureNoct({ poa: 800, airC: 20, noctC: 4.5 })).toThrow('noctC is 4.5');
});
