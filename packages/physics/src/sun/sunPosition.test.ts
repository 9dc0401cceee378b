import { expect, test } from 'vitest';
import truth from '../../fixtures/sun-position.json' with { type: 'json' };
import { decimalYear, deltaT } from './deltaT.ts';
import { blankGeocentricSun, dayJ2000, geocentricSun } from './geocentricSun.ts';
import { sunPosition } from './sunPosition.ts';

const DEG = 180 / Math.PI;
const wrapped = (deg: number): number => ((((deg + 180) % 360) + 360) % 360) - 180;

test('the worked example of Reda and Andreas (2004), as printed', () => {
  // 17 October 2003, 12:30:30 at UTC−7, 39.742476° N 105.1786° W, 1830.14 m, 820 mbar, 11 °C, ΔT 67 s
  const timeMs = Date.UTC(2003, 9, 17, 19, 30, 30);
  const sun = sunPosition({
    timeMs,
    latitudeDeg: 39.742476,
    longitudeDeg: -105.1786,
    altitudeM: 1830.14,
    pressurePa: 82000,
    temperatureC: 11,
    deltaTS: 67,
  });
  expect(sun.apparentZenithDeg).toBeCloseTo(50.11162, 5);
  expect(sun.azimuthDeg).toBeCloseTo(194.34024, 5);
  expect(90 - sun.trueZenithDeg).toBeCloseTo(39.872046, 5);

  const geo = geocentricSun(dayJ2000(timeMs), 67, blankGeocentricSun());
  expect(geo.distanceAu).toBeCloseTo(0.9965422974, 9);
  expect((geo.heliocentricLongitude * DEG) % 360).toBeCloseTo(24.0182616917, 6);
  expect(geo.heliocentricLatitude * DEG).toBeCloseTo(-0.0001011219, 9);
  expect(geo.nutationLongitude * DEG).toBeCloseTo(-0.0039984, 6);
  expect(geo.obliquity * DEG).toBeCloseTo(23.440465, 6);
  expect(geo.rightAscension * DEG + 360).toBeCloseTo(202.22741, 4);
  expect(geo.declination * DEG).toBeCloseTo(-9.31434, 4);
});

test('independent rows from 1990 to 2060, near the horizon too, to half their last digit', () => {
  for (const row of truth.rows) {
    const sun = sunPosition({
      timeMs: Date.parse(row.time_utc),
      latitudeDeg: row.lat,
      longitudeDeg: row.lon,
      altitudeM: row.altitude_m,
      pressurePa: row.pressure_pa,
      temperatureC: row.temperature_c,
      deltaTS: row.delta_t_s,
    });
    // the file allows 0.0005°; a wrong digit in a table shows at 1e-6
    expect(Math.abs(sun.apparentZenithDeg - row.apparent_zenith_deg), row.id).toBeLessThan(1e-6);
    expect(Math.abs(sun.trueZenithDeg - row.true_zenith_deg), row.id).toBeLessThan(1e-6);
    const across = wrapped(sun.azimuthDeg - row.azimuth_deg) * Math.sin(row.true_zenith_deg / DEG);
    expect(Math.abs(across), row.id).toBeLessThan(1e-6);
    expect(Math.abs(sun.equationOfTimeMin - row.equation_of_time_min), row.id).toBeLessThan(1e-6);
    expect(Math.abs(sun.earthSunDistanceAu - row.earth_sun_distance_au), row.id).toBeLessThan(1e-8);
    expect(Math.abs(sun.etrNormalDistanceWM2 - row.etr_normal_distance_w_m2), row.id).toBeLessThan(1e-3);
    expect(Math.abs(sun.etrNormalSpencerWM2 - row.etr_normal_spencer_w_m2), row.id).toBeLessThan(1e-4);
    expect(sun.dayOfYearUtc, row.id).toBe(row.day_of_year_utc);
  }
});

test('ΔT by the polynomials of Espenak and Meeus, to the hundredth the rows carry', () => {
  for (const row of truth.rows) {
    expect(Math.abs(deltaT(decimalYear(Date.parse(row.time_utc))) - row.delta_t_s), row.id).toBeLessThan(0.0051);
  }
  // observed values, Espenak and Meeus 2006, table 1 (from memory): 1900 −3, 1950 29, 2000 64 s
  expect(deltaT(1900)).toBeCloseTo(-2.8, 1);
  expect(deltaT(1950)).toBeCloseTo(29.07, 2);
  expect(deltaT(2000)).toBeCloseTo(63.86, 2);
});

test('the pieces of ΔT meet to within a second', () => {
  for (const year of [1920, 1941, 1961, 1986, 2005, 2050, 2150]) {
    expect(Math.abs(deltaT(year) - deltaT(year - 1e-9)), String(year)).toBeLessThan(1);
  }
});

test('refuses a latitude of 91 and an instant that is no number', () => {
  const site = { latitudeDeg: 40, longitudeDeg: 0 };
  expect(() => sunPosition({ ...site, latitudeDeg: 91, timeMs: 0 })).toThrow('latitudeDeg is 91');
  expect(() => sunPosition({ ...site, timeMs: Number.NaN })).toThrow('timeMs is NaN');
  expect(() => sunPosition({ ...site, timeMs: 0, pressurePa: -1 })).toThrow('pressurePa is -1');
});
