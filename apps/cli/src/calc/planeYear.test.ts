import { expect, test } from 'vitest';
import { planeYearCalc } from './planeYear.ts';

const HOUR_MS = 3_600_000;

/** A whole year of hours at the equator: 100 W/m² of diffuse light round the clock, no beam, 20 °C, no wind. */
function evenYear(hours = 8760): Uint8Array {
  const rows = Array.from({ length: hours }, (_, k) => {
    const at = new Date(Date.UTC(2025, 0, 1, 0, 30) + k * HOUR_MS);
    return `${at.toISOString().slice(0, 19)}Z,${at.getUTCMonth() + 1},100,0,100,20,0`;
  });
  return new TextEncoder().encode(`sun_time_utc,month,ghi,dni,dhi,air_c,wind_m_s\n${rows.join('\n')}\n`);
}

const flat = {
  ...(planeYearCalc.example as object),
  weatherFile: 'even.csv',
  tiltDeg: 0,
  lat: 0,
  lon: 0,
  gammaPerK: -0.004,
};
const answer = (row: object, bytes = evenYear()) => planeYearCalc.answer(row, new Map([['even.csv', bytes]]));

interface Result {
  readonly annual: Record<string, number>;
  readonly monthly: Record<string, number[]>;
  readonly hours: number;
}
const resultOf = (row: object) => {
  const found = answer(row);
  if (!('result' in found)) throw new Error(JSON.stringify(found.problems));
  return found.result as unknown as Result;
};

test('worked example: even diffuse light on a flat plane counts the hours of sun and nothing else', () => {
  const { annual, monthly, hours } = resultOf(flat);
  expect(hours).toBe(8760);
  // at the equator the refracted centre of the sun is up for 12 h 4.6 min a day, 4408 h a year: 0.1 kW times that;
  // hours are counted whole by their middle, which misses up to 1 % over the year
  expect(annual.poaIsotropicKwhM2).toBeGreaterThan(440.8 * 0.99);
  expect(annual.poaIsotropicKwhM2).toBeLessThan(440.8 * 1.01);
  expect(annual.poaBeamKwhM2).toBe(0);
  expect(annual.groundKwhM2).toBe(0);
  expect(monthly.poaIsotropicKwhM2?.reduce((sum, x) => sum + x, 0)).toBeCloseTo(annual.poaIsotropicKwhM2 as number, 9);
  // Faiman without wind: 20 °C + 100/25 K; the overcast sky of Perez hardly moves that
  expect(annual.cellCWeightedByPoa).toBeCloseTo(24, 1);
  // linear power: 1 + γ (24 − 25) = 1.004 at γ = −0.004
  expect((annual.dcLinearKwhPerKwp as number) / (annual.poaPerezKwhM2 as number)).toBeCloseTo(1.004, 4);
});

test('law: what the file of parameters says may stand in a group of its own', () => {
  const { gammaPerK, moduleStcW, alphaIscAPerK, fiveParameters, ...row } = flat as Record<string, unknown>;
  const grouped = { ...row, parameters: { gammaPerK, moduleStcW, alphaIscAPerK, fiveParameters } };
  expect(resultOf(grouped)).toEqual(resultOf(flat));
});

test.each([
  [
    'a file that cannot be opened',
    { ...flat, weatherFile: 'other.csv' },
    evenYear(),
    { code: 'missing', at: 'weatherFile' },
  ],
  ['a file that is no weather', flat, new TextEncoder().encode('<html>'), { code: 'inconsistent', at: 'weatherFile' }],
  ['ten days where a year is needed', flat, evenYear(240), { code: 'missing', at: 'weatherFile', got: '240 hours' }],
  ['a table without its place', { ...flat, lat: null }, evenYear(), { code: 'missing', at: 'lat' }],
  ['a place beyond the pole', { ...flat, lat: 91 }, evenYear(), { code: 'outside-range', at: 'lat' }],
])('refusal: %s', (_, row, bytes, facts) => {
  expect(answer(row, bytes)).toMatchObject({ problems: [facts] });
});
