import { expect, test } from 'vitest';
import truth from '../../fixtures/series-plane.json' with { type: 'json' };
import { perezSeries, planeSeries } from '../sky/index.ts';
import { sunAtInstants } from '../sun/index.ts';
import { MONTH_DAYS } from './calendarYear.ts';
import { type SeriesSite, type SyntheticYear, synthesiseYear } from './synthesiseYear.ts';
import { WIND_UNKNOWN_MS } from './windYear.ts';

const [greensboro, aurora, piedmont] = truth.files;
const year = (file: (typeof truth.files)[number], seed: number): SyntheticYear =>
  synthesiseYear(file.normals, file, seed);

/** Mean of an hourly column over each month. */
function monthMeans(made: SyntheticYear, column: Float64Array): number[] {
  const sums = new Float64Array(12);
  for (let i = 0; i < column.length; i++) sums[made.month[i] - 1] += column[i];
  return Array.from(sums, (sum, m) => sum / (MONTH_DAYS[m] * 24));
}

test('months are exact: radiation, temperature and wind, for any seed', () => {
  for (const seed of [1, 2, 3, -7, 2 ** 40 + 5]) {
    const made = year(aurora, seed);
    const [ghi, air, wind] = [made.ghi, made.airC, made.windMS].map((column) => monthMeans(made, column));
    for (let m = 0; m < 12; m++) {
      expect(Math.abs((ghi[m] * 24) / 1000 - aurora.normals.ghiKwhM2Day[m])).toBeLessThan(1e-9);
      expect(Math.abs(air[m] - aurora.normals.meanC[m])).toBeLessThan(1e-9);
      expect(Math.abs(wind[m] - aurora.normals.windMS[m])).toBeLessThan(1e-9);
    }
  }
});

test('the same seed gives the same year, another seed another', () => {
  expect(year(greensboro, 4)).toEqual(year(greensboro, 4));
  expect(year(greensboro, 4).ghi).not.toEqual(year(greensboro, 5).ghi);
});

test('no radiation while the sun is down, none above the ceiling, no negative and no NaN', () => {
  const made = year(piedmont, 11);
  const sun = sunAtInstants(made.sunTimeMs, piedmont);
  for (let i = 0; i < made.ghi.length; i++) {
    if (sun.apparentZenithDeg[i] >= 90) expect(made.ghi[i] + made.dni[i] + made.dhi[i]).toBe(0);
    expect(made.ghi[i]).toBeLessThanOrEqual(made.ceiling[i]);
    expect(made.ghi[i]).toBeGreaterThanOrEqual(0);
    // direct and diffuse make up global; the apparent zenith is tabled to 1e-4°
    const parts = made.dhi[i] + made.dni[i] * Math.max(0, sun.up[i]);
    expect(Math.abs(parts - made.ghi[i])).toBeLessThan(0.01);
    expect(Number.isFinite(made.airC[i] + made.windMS[i] + made.dni[i] + made.dhi[i])).toBe(true);
  }
});

test('on a tilted plane a made year is within 3 % of the published year its means came from', () => {
  for (const file of truth.files) {
    const { tiltDeg, azimuthDeg, albedo, annualKwhM2, monthlyKwhM2 } = file.plane;
    for (const seed of [1, 2, 3, 4, 5]) {
      const made = year(file, seed);
      const sun = sunAtInstants(made.sunTimeMs, file);
      const { beam, sky, ground } = planeSeries(sun, made, perezSeries(sun, made), { tiltDeg, azimuthDeg, albedo });
      const monthly = new Float64Array(12);
      for (let i = 0; i < made.ghi.length; i++) monthly[made.month[i] - 1] += (beam[i] + sky[i] + ground[i]) / 1000;
      const annual = monthly.reduce((sum, value) => sum + value, 0);
      expect(Math.abs(annual / annualKwhM2 - 1)).toBeLessThan(0.03);
      // single months of a typical year have their own run of clear and dull days
      for (let m = 0; m < 12; m++) expect(Math.abs(monthly[m] / monthlyKwhM2[m] - 1)).toBeLessThan(0.2);
    }
  }
});

test('days swing as wide as the means say, and clear days wider than dull ones', () => {
  const made = year(greensboro, 8);
  const swing = Array.from({ length: 365 }, (_, d) => {
    const day = made.airC.subarray(d * 24, d * 24 + 24);
    return Math.max(...day) - Math.min(...day);
  });
  const { dayMaxC, dayMinC } = greensboro.normals;
  const wanted = dayMaxC.reduce((sum, max, m) => sum + (max - dayMinC[m]) * MONTH_DAYS[m], 0) / 365;
  const mean = (values: number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;
  // the daily curve spans 0.99 of its amplitude at whole hours
  expect(Math.abs(mean(swing) / wanted - 1)).toBeLessThan(0.03);
  expect(mean(swing.filter((_, d) => made.dayK[d] > 0.6))).toBeGreaterThan(
    1.2 * mean(swing.filter((_, d) => made.dayK[d] < 0.3)),
  );
});

test('the warmest hour is in the afternoon, in the south too', () => {
  const south: SeriesSite = { latitudeDeg: -36.1, longitudeDeg: 150, utcOffsetH: 10 };
  const turned = (months: readonly number[]) => [...months.slice(6), ...months.slice(0, 6)];
  const { ghiKwhM2Day, meanC, dayMaxC, dayMinC } = greensboro.normals;
  const normals = {
    ghiKwhM2Day: turned(ghiKwhM2Day),
    meanC: turned(meanC),
    dayMaxC: turned(dayMaxC),
    dayMinC: turned(dayMinC),
    windMS: undefined,
  };
  const made = synthesiseYear(normals, south, 1);
  const byHour = Array.from({ length: 24 }, (_, h) =>
    made.airC.filter((__, i) => i % 24 === h).reduce((a, b) => a + b, 0),
  );
  expect(byHour.indexOf(Math.max(...byHour))).toBe(14); // 14:00 to 15:00
  expect(made.windAssumed).toBe(true);
  expect(monthMeans(made, made.windMS)[0]).toBeCloseTo(WIND_UNKNOWN_MS, 12);
});

test('polar night: a month without radiation stays dark', () => {
  const normals = {
    ghiKwhM2Day: [0, 0.4, 1.6, 3.6, 5.2, 5.6, 5, 3.2, 1.6, 0.5, 0, 0],
    meanC: [-4, -4, -3, 1, 5, 9, 12, 11, 7, 3, -1, -3],
    dayMaxC: [-2, -2, 0, 3, 8, 13, 15, 14, 10, 5, 1, -1],
    dayMinC: [-6, -6, -5, -2, 2, 6, 9, 8, 5, 1, -3, -5],
    windMS: undefined,
  };
  const made = synthesiseYear(normals, { latitudeDeg: 69.65, longitudeDeg: 18.96, utcOffsetH: 1 }, 3);
  expect(monthMeans(made, made.ghi)[0]).toBe(0);
  expect((monthMeans(made, made.ghi)[5] * 24) / 1000).toBeCloseTo(5.6, 9);
});

test('refuses a month brighter than the sun, a leap year, a monthly sum in place of a mean day', () => {
  const { normals } = greensboro;
  const january = (value: number) => ({ ...normals, ghiKwhM2Day: normals.ghiKwhM2Day.with(0, value) });
  expect(() => synthesiseYear(january(5), greensboro, 1)).toThrow('ghiKwhM2Day[0] is 5');
  expect(() => synthesiseYear(january(0.1), greensboro, 1)).toThrow(
    '0.1 to 0.85 of what the sun gives outside the air',
  );
  expect(() => synthesiseYear(january(78), greensboro, 1)).toThrow('it has to be 0 to 15');
  expect(() => synthesiseYear(normals, { ...greensboro, year: 2024 }, 1)).toThrow('year is 2024');
});

test('the means of a place far away are cut to the sky of this one, and the months are named', () => {
  // Greensboro's January taken to Tromsø: no sun at all; its June is possible there
  const { normals } = greensboro;
  const tromso = { latitudeDeg: 69.65, longitudeDeg: 18.96, utcOffsetH: 1 };
  expect(() => synthesiseYear(normals, tromso, 1)).toThrow('outside the air');
  const made = synthesiseYear(normals, { ...tromso, beyondSky: 'cut' }, 1);
  expect(made.cutMonths).toContain(0);
  expect(made.cutMonths).not.toContain(5);
  expect((monthMeans(made, made.ghi)[5] * 24) / 1000).toBeCloseTo(normals.ghiKwhM2Day[5] as number, 9);
  expect(made.ghi.every(Number.isFinite)).toBe(true);
  // nothing is cut where the means are those of the place
  expect(synthesiseYear(normals, { ...greensboro, beyondSky: 'cut' }, 1)).toEqual(
    synthesiseYear(normals, greensboro, 1),
  );
});
