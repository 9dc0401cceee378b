import type { WeatherYear } from '@eaveline/formats';
import { Refusal, sunPosition } from '@eaveline/physics';
import { expect, test } from 'vitest';
import type { Climate, SitePlan } from '../site/types.ts';
import { civilTimeAt, standardOffsetH, zoneOffsetH } from './civilClock.ts';
import { daylight } from './daylight.ts';
import { sunStage } from './index.ts';

const months = (value: number) => Array.from({ length: 12 }, () => value);
/** Sun of a mild inland place at 37.6° S; daily kWh/m², January first. */
const GHI = [6.9, 6.1, 4.8, 3.3, 2.2, 1.7, 1.9, 2.6, 3.7, 5.0, 6.1, 6.8];
const climate: Climate = {
  kind: 'monthly normals',
  name: 'hand-made',
  places: [],
  distanceKm: 0,
  far: false,
  quality: '',
  annualSd: 0.05,
  ghiKwhM2Day: GHI,
  meanC: months(14),
  credit: 'made up for this test',
  remarks: [],
  normals: { ghiKwhM2Day: GHI, meanC: months(14), dayMaxC: months(19), dayMinC: months(9), windMS: months(3) },
};
const site = {
  latitudeDeg: -37.6,
  longitudeDeg: 143.9,
  elevationM: 430,
  elevationGuessed: false,
  zone: 'Australia/Melbourne',
  climate,
} as SitePlan;
const sunOf = (place: SitePlan, weather?: WeatherYear) => sunStage.run({}, { site: place }, weather ? { weather } : {});

test('the generated year keeps every month of the climate: days × daily mean', () => {
  const sun = sunOf(site);
  const days = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];
  expect(sun.steps).toBe(8760);
  sun.monthlyGhiKwhM2.forEach((kwh, m) => {
    expect(kwh).toBeCloseTo((GHI[m] as number) * (days[m] as number), 9);
  });
  // 6.9·31 + 6.1·28 + 4.8·31 + 3.3·30 + 2.2·31 + 1.7·30 + 1.9·31 + 2.6·31 + 3.7·30 + 5·31 + 6.1·30 + 6.8·31 = 1551.0
  expect(sun.annualGhiKwhM2).toBeCloseTo(1551, 9);
});

test('the working names its months, and letters place and sun with the decimals of sheet 01', () => {
  const shown = sunOf(site).workings[0]?.inputs?.map(({ name, value, decimals }) => [
    name,
    (value as number).toFixed(decimals),
  ]);
  // the sheet has 37.60° S, 143.90° E, and 6.9 above the bar of January
  expect(shown?.slice(0, 3)).toEqual([
    ['latitude', '-37.60'],
    ['longitude', '143.90'],
    ['January, mean day', '6.9'],
  ]);
  expect(shown?.at(-1)).toEqual(['December, mean day', '6.8']);
});

test('hours are those of standard time: the sun stands highest in the hour from 12 at 143.9° E and UTC + 10', () => {
  // 143.9° is 9.593 h ahead of UTC, so mean noon is at 12.41 by the clock
  const { zenithDeg, hour, month } = sunOf(site);
  const highest = zenithDeg.subarray(24 * 40, 24 * 41).indexOf(Math.min(...zenithDeg.subarray(24 * 40, 24 * 41)));
  expect(hour[24 * 40 + highest]).toBe(12);
  expect([month[0], month[30 * 24 + 23], month[31 * 24], month[8759]]).toEqual([0, 0, 1, 11]);
});

test('the same place is answered with the same object, another place is not', () => {
  const first = sunOf(site);
  expect(sunOf({ ...site, missing: [] })).toBe(first);
  expect(sunOf({ ...site, latitudeDeg: -37.7 })).not.toBe(first);
});

/** Noon hours of three days in January 2003 and three in February 1998, as a typical year mixes them. */
function mixedYear(): WeatherYear {
  const starts = [Date.UTC(2003, 0, 30), Date.UTC(2003, 0, 31), Date.UTC(1998, 1, 1), Date.UTC(1998, 1, 2)];
  const sunTimeMs = Float64Array.from(
    starts.flatMap((start) => Array.from({ length: 24 }, (_, h) => start + (h + 0.5) * 3.6e6)),
  );
  const column = (value: number) => new Float64Array(sunTimeMs.length).fill(value);
  return {
    stepS: 3600,
    sunTimeMs,
    month: Uint8Array.from(sunTimeMs, (_, i) => (i < 48 ? 1 : 2)),
    ghi: column(100),
    dni: column(0),
    dhi: column(100),
    airC: column(10),
    windMS: column(1),
    place: { name: 'Elsewhere', latitudeDeg: 40, longitudeDeg: -105, elevationM: 1600, utcOffsetH: -7 },
  } as unknown as WeatherYear;
}

test('rows of a typical year come from several years: each has the sun of its own instant and of the file’s place', () => {
  const weather = mixedYear();
  const sun = sunOf(site, weather);
  for (const i of [0, 19, 47, 48, 67, 95]) {
    const timeMs = weather.sunTimeMs[i] as number;
    const truth = sunPosition({ latitudeDeg: 40, longitudeDeg: -105, altitudeM: 1600, timeMs });
    expect(Math.abs((sun.zenithDeg[i] as number) - truth.apparentZenithDeg)).toBeLessThan(2e-4);
  }
  // 48 h × 100 W/m² in each of two months
  expect(sun.monthlyGhiKwhM2.slice(0, 3)).toEqual([4.8, 4.8, 0]);
  // 19:30 UTC is 12:30 by the file's clock
  expect(sun.hour[19]).toBe(12);
});

test('the civil clock: Melbourne keeps summer time in January, Adelaide stands on a half hour, Phoenix never moves', () => {
  expect(zoneOffsetH('Australia/Melbourne', Date.UTC(2025, 0, 15))).toBe(11);
  expect(zoneOffsetH('Australia/Melbourne', Date.UTC(2025, 6, 15))).toBe(10);
  expect(standardOffsetH('Australia/Adelaide', 2025)).toBe(9.5);
  expect(standardOffsetH('Europe/Dublin', 2025)).toBe(0);
  expect(standardOffsetH('America/Phoenix', 2025)).toBe(-7);
  const midnightUtc = Date.UTC(2025, 0, 15, 0, 0, 30);
  expect(civilTimeAt('Australia/Melbourne', midnightUtc)).toEqual({
    ...{ year: 2025, month: 1, day: 15 },
    ...{ hour: 11, minute: 0, second: 30 },
  });
  expect(civilTimeAt('America/Phoenix', midnightUtc)).toMatchObject({ day: 14, hour: 17 });
  expect(() => zoneOffsetH('Mars/Olympus', 0)).toThrow(Refusal);
});

test('noon on 15 April, when sundial and clock agree: 12 h + offset − longitude/15', () => {
  // the equation of time is zero on 15 April (within half a minute); London −0.13° with summer time: 13 h + 0.0087
  const noonH = (found: ReturnType<typeof daylight>) => found[3]?.noonH ?? 0;
  expect(Math.abs(noonH(daylight(51.5, -0.13, 'Europe/London')) - 13.009)).toBeLessThan(0.01);
  // Denver −105° with summer time: 12 − 6 + 7 = 13 h
  expect(Math.abs(noonH(daylight(39.7, -105, 'America/Denver')) - 13)).toBeLessThan(0.01);
  const melbourne = daylight(-37.6, 143.9, 'Australia/Melbourne');
  const length = (m: number) => (melbourne[m]?.setH ?? 0) - (melbourne[m]?.riseH ?? 0);
  // day length of the almanac formula, cos H = (sin −0.8333° − sin φ sin δ)/(cos φ cos δ): δ 23.3° on 15 June, 9.57 h
  expect(length(5)).toBeCloseTo(9.57, 1);
});

test('north of the polar circle the sun neither rises nor sets in June and December', () => {
  const tromso = daylight(69.65, 18.96, 'Europe/Oslo');
  for (const m of [5, 11]) {
    expect(tromso[m]?.riseH).toBeUndefined();
    expect(tromso[m]?.setH).toBeUndefined();
    expect(tromso[m]?.noonH).toBeGreaterThan(11);
  }
});
