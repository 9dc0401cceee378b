import { expect, test } from 'vitest';
import truth from '../../fixtures/clear-sky.json' with { type: 'json' };
import { sunSeries } from '../sun/sunSeries.ts';
import { airMassKastenYoung1989 } from './airMass.ts';
import { clearSkyHaurwitz1945, clearSkyIneichenPerez2002, clearSkySeries } from './clearSky.ts';

test('independent rows of both models, to half the last digit they print', () => {
  for (const row of truth.rows) {
    if (row.model === 'haurwitz') {
      expect(Math.abs(clearSkyHaurwitz1945(row.apparent_zenith_deg) - row.ghi), row.id).toBeLessThan(6e-5);
      continue;
    }
    const got = clearSkyIneichenPerez2002({
      apparentZenithDeg: row.apparent_zenith_deg,
      linkeTurbidity: row.linke_turbidity as number,
      altitudeM: row.altitude_m as number,
      dniExtra: row.dni_extra as number,
      airmassAbsolute: row.airmass_absolute ?? undefined,
    });
    expect(Math.abs(got.ghi - row.ghi), row.id).toBeLessThan(6e-5);
    expect(Math.abs(got.dni - (row.dni as number)), row.id).toBeLessThan(6e-5);
    expect(Math.abs(got.dhi - (row.dhi as number)), row.id).toBeLessThan(6e-5);
  }
});

test('air mass as Kasten and Young print it', () => {
  // Applied Optics 28(22), table: 60° → 1.9939, 85° → 10.31, 90° → 37.92 (from memory)
  expect(airMassKastenYoung1989(60)).toBeCloseTo(1.994, 3);
  expect(airMassKastenYoung1989(85)).toBeCloseTo(10.31, 2);
  expect(airMassKastenYoung1989(90)).toBeCloseTo(37.92, 2);
  expect(airMassKastenYoung1989(90.1)).toBeUndefined();
});

test('the series is the single instant, step for step', () => {
  const site = { latitudeDeg: 46, longitudeDeg: 7, altitudeM: 500, pressurePa: 95_461 };
  const sun = sunSeries({ ...site, startMs: Date.UTC(2025, 5, 1), stepS: 900, count: 960 });
  const series = clearSkySeries(sun, { ...site, linkeTurbidity: 3 });
  for (let i = 0; i < sun.count; i++) {
    const once = clearSkyIneichenPerez2002({
      ...{ apparentZenithDeg: sun.apparentZenithDeg[i], dniExtra: sun.etrNormalWM2[i] },
      ...{ linkeTurbidity: 3, altitudeM: 500, pressurePa: 95_461 },
    });
    // the series takes cos z from the vector and air mass from a table
    expect(Math.abs(series.ghi[i] - once.ghi)).toBeLessThan(0.005);
    expect(Math.abs(series.dni[i] - once.dni)).toBeLessThan(0.005);
    expect(Math.abs(series.dhi[i] - once.dhi)).toBeLessThan(0.005);
  }
});

test('refuses a turbidity of 0', () => {
  const at = { apparentZenithDeg: 40, altitudeM: 0, dniExtra: 1366 };
  expect(() => clearSkyIneichenPerez2002({ ...at, linkeTurbidity: 0 })).toThrow('linkeTurbidity is 0');
});
