import { expect, test } from 'vitest';
import truth from '../../fixtures/plane-irradiance.json' with { type: 'json' };
import { planeIrradiance } from './planeIrradiance.ts';

const none = { dni: 0, dhi: 0, ghi: 0, dniExtra: 1366 };

test('incidence of the SPA sample run: slope 30°, 10° east of south, 25.187° as printed', () => {
  const sun = { sunZenithDeg: 50.111622, sunAzimuthDeg: 194.340241 };
  // Reda and Andreas 2004, sample run
  expect(planeIrradiance({ ...sun, ...none, tiltDeg: 30, surfaceAzimuthDeg: 170 }).aoiDeg).toBeCloseTo(25.187, 3);
});

test('independent rows, one a Perez bin and the awkward ones: low sun, no diffuse, night, twilight', () => {
  const bins = new Set<number>();
  for (const row of truth.rows) {
    const got = planeIrradiance({
      sunZenithDeg: row.sun_zenith_deg,
      sunAzimuthDeg: row.sun_azimuth_deg,
      dni: row.dni,
      dhi: row.dhi,
      ghi: row.ghi,
      dniExtra: row.dni_extra,
      airmassRelative: row.airmass_relative ?? undefined,
      tiltDeg: row.tilt_deg,
      surfaceAzimuthDeg: row.surface_azimuth_deg,
      albedo: row.albedo,
    });
    // rows print four decimals: half of the last digit, and a hair
    const near = (value: number, want: number, what: string): void =>
      expect(Math.abs(value - want), `${row.id} ${what}`).toBeLessThan(6e-5);
    near(got.aoiDeg, row.aoi_deg, 'aoi');
    near(got.poaBeam, row.poa_beam, 'beam');
    near(got.skyIsotropic, row.sky_isotropic, 'isotropic');
    near(got.skyHaydavies, row.sky_haydavies, 'Hay and Davies');
    near(got.skyPerez, row.sky_perez, 'Perez');
    near(got.groundDiffuse, row.ground_diffuse, 'ground');
    near(got.perezPartIsotropic, row.perez_part_isotropic, 'part');
    near(got.perezPartCircumsolar, row.perez_part_circumsolar, 'part');
    near(got.perezPartHorizon, row.perez_part_horizon, 'part');
    expect(got.perezBin, row.id).toBe(row.perez_bin ?? undefined);
    expect(got.perezEpsilon === undefined, row.id).toBe(row.perez_epsilon === null);
    expect(got.perezDelta === undefined, row.id).toBe(row.perez_delta === null);
    if (row.perez_bin !== null) bins.add(row.perez_bin);
  }
  expect([...bins].sort()).toEqual([1, 2, 3, 4, 5, 6, 7, 8]); // no bin was silently left out
});

test('a horizontal plane gets the horizontal light back, whatever the sky', () => {
  const got = planeIrradiance({
    ...{ sunZenithDeg: 40, sunAzimuthDeg: 120, dni: 700, dhi: 120, ghi: 656.23, dniExtra: 1360 },
    ...{ tiltDeg: 0, surfaceAzimuthDeg: 0 },
  });
  // 700 cos 40° = 536.231; F1 moves light about the sky but cos aoi = cos z puts it back
  expect(got.poaBeam).toBeCloseTo(536.231, 3);
  expect(got.skyPerez).toBeCloseTo(120, 9);
  expect(got.skyHaydavies).toBeCloseTo(120, 9);
  expect(got.groundDiffuse).toBe(0);
});

test('refuses negative irradiance and a tilt of 181', () => {
  const at = { sunZenithDeg: 40, sunAzimuthDeg: 120, ...none, tiltDeg: 30, surfaceAzimuthDeg: 180 };
  expect(() => planeIrradiance({ ...at, dni: -5 })).toThrow('dni is -5');
  expect(() => planeIrradiance({ ...at, tiltDeg: 181 })).toThrow('tiltDeg is 181');
  expect(() => planeIrradiance({ ...at, dhi: Number.NaN })).toThrow('dhi is NaN');
});
