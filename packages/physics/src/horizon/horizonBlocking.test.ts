import { expect, test } from 'vitest';
import truth from '../../fixtures/horizon.json' with { type: 'json' };
import { horizonBlocking } from './horizonBlocking.ts';
import { type HorizonPairs, horizonElevationDeg, horizonProfile } from './horizonProfile.ts';

const MONTHS = 12;

test('the skyline between its pairs and through north', () => {
  for (const row of truth.rows) {
    const profile = horizonProfile(row.horizon_azimuth_elevation_deg as unknown as HorizonPairs);
    for (const [azimuth, elevation] of row.interpolation_check as [number, number][]) {
      expect(Math.abs(horizonElevationDeg(profile, azimuth) - elevation), `${row.id} ${azimuth}`).toBeLessThan(1e-6);
    }
  }
});

test('a skyline of two pairs by hand', () => {
  // 10° at 350, 20° at 30: forty degrees apart through north, so due north stands at 12.5°
  const profile = horizonProfile([
    [30, 20],
    [350, 10],
  ]);
  expect(horizonElevationDeg(profile, 0)).toBeCloseTo(12.5, 12);
  expect(horizonElevationDeg(profile, -360)).toBeCloseTo(12.5, 12);
  expect(horizonElevationDeg(profile, 190)).toBeCloseTo(15, 12);
  expect(horizonElevationDeg(horizonProfile([[77, 4]]), 200)).toBe(4);
  const closed: HorizonPairs = [
    [0, 6],
    [180, 2],
    [360, 6],
  ];
  expect(horizonElevationDeg(horizonProfile(closed), 270)).toBeCloseTo(4, 12);
});

test('hours and beam of a valley town and a suburb, month by month', () => {
  for (const row of truth.rows) {
    const got = horizonBlocking({
      ...{ latitudeDeg: row.lat, longitudeDeg: row.lon, altitudeM: row.altitude_m, pressurePa: row.pressure_pa },
      ...{ deltaTS: 67, year: row.year, utcOffsetH: row.utc_offset_h },
      horizon: row.horizon_azimuth_elevation_deg as unknown as HorizonPairs,
    });
    for (let m = 0; m < MONTHS; m++) {
      const hours = got.monthly[m];
      // four decimals printed; one minute either way at a crossing would be 0.017 h, and 0.1 h is allowed
      expect(Math.abs(hours.sunUpH - row.monthly.sun_up_h[m]), `${row.id} ${m}`).toBeLessThan(0.018);
      expect(Math.abs(hours.blockedH - row.monthly.blocked_h[m]), `${row.id} ${m}`).toBeLessThan(0.018);
      expect(Math.abs(hours.beamNormalClearKwhM2 - row.monthly.beam_normal_clear_kwh_m2[m])).toBeLessThan(0.001);
      expect(Math.abs(hours.beamNormalBlockedKwhM2 - row.monthly.beam_normal_blocked_kwh_m2[m])).toBeLessThan(0.01);
    }
    expect(Math.abs(got.annual.blockedH - row.annual.blocked_h)).toBeLessThan(0.05);
  }
});

test('refuses pairs out of order, north twice, and none at all', () => {
  const twoTimes: HorizonPairs = [
    [90, 5],
    [40, 8],
  ];
  expect(() => horizonProfile(twoTimes)).toThrow('horizon[1][0] is 40');
  const north: HorizonPairs = [
    [0, 5],
    [360, 8],
  ];
  expect(() => horizonProfile(north)).toThrow('horizon[1][0] is 360');
  expect(() => horizonProfile([])).toThrow('at least one pair');
  const site = { latitudeDeg: 40, longitudeDeg: 0, year: 2025, utcOffsetH: 0 };
  expect(() => horizonBlocking({ ...site, horizon: [[0, 0]], stepS: 7 })).toThrow('stepS is 7');
});
