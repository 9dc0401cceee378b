import { expect, test } from 'vitest';
import { excerpt, excerptBytes, said } from '../../test/excerpt.ts';
import { inLocalTime } from './inLocalTime.ts';
import { readHourlyWeather } from './readHourlyWeather.ts';
import { readPvgis } from './readPvgis.ts';
import { readTmy3 } from './readTmy3.ts';
import { readWeatherFile } from './readWeatherFile.ts';

const greensboro = excerpt('greensboro-3-days.tmy3.csv');
const piedmont = excerpt('piedmont-3-days.pvgis.csv');
const hourly = excerpt('greensboro-3-days.hourly.csv');
const iso = (ms: number | undefined) => new Date(ms ?? 0).toISOString();

test('TMY3: columns by name, hour-ending stamps, 24:00 on its own day', () => {
  const { data, what } = readWeatherFile(excerptBytes('greensboro-3-days.tmy3.csv'));
  expect(what).toBe('tmy3');
  expect(data?.place).toEqual({
    name: 'GREENSBORO PIEDMONT TRIAD INT, NC',
    latitudeDeg: 36.1,
    longitudeDeg: -79.95,
    elevationM: 273,
    utcOffsetH: -5,
  });
  expect([iso(data?.sunTimeMs[0]), iso(data?.sunTimeMs[23])]).toEqual([
    '1988-01-04T05:30:00.000Z',
    '1988-01-05T04:30:00.000Z',
  ]);
  expect(data?.sums.ghiKwhM2).toBeCloseTo(6.776, 9);
  expect(data?.sums.dniKwhM2).toBeCloseTo(9.225, 9);
  expect(data?.sums.dhiKwhM2).toBeCloseTo(2.977, 9);
  expect(data?.sums.meanAirC).toBeCloseTo(-2.5875, 9);
  expect(data?.sums.meanWindMS).toBeCloseTo(3.24444, 5);
});

test('TMY3: −9900 is missing, not a value', () => {
  const hole = greensboro.replace(/^(01\/04\/1988,12:00,\d+,\d+),\d+/m, '$1,-9900');
  const { data } = readTmy3(hole);
  expect(data?.covered.ghi).toBe(71);
  expect(data?.has.ghi[11]).toBe(0);
});

test('TMY3: without a radiation column nothing is read', () => {
  const reading = readTmy3(greensboro.replace('DNI (W/m^2)', 'DNI'));
  expect(reading.data).toBeUndefined();
  expect(said(reading, 'column-missing')).toContain('Line 2 names no column DNI (W/m^2).');
});

test('TMY3: radiation ahead of the sun is said and the shift offered', () => {
  const reading = readTmy3(excerpt('honolulu-early-3-days.tmy3.csv'));
  expect(said(reading, 'sun-shift')).toMatch(/runs about an hour \(\d\d minutes\) ahead of the sun/);
  const offer = reading.assumptions.find(({ key }) => key === 'sunShiftH');
  // the whole published year: 45 min by energy centre and clear edge, 57 min by mean closure; three days lie near
  expect(Number(offer?.choices?.[1])).toBeGreaterThan(0.7);
  expect(Number(offer?.choices?.[1])).toBeLessThan(1.1);
});

test('PVGIS, newer head: the sun stands at the stamp plus the offset of the head', () => {
  const { data, what } = readWeatherFile(excerptBytes('piedmont-3-days.pvgis.csv'));
  expect(what).toBe('pvgis-tmy');
  // 0.1761 h = 10 min 33.96 s
  expect(iso(data?.sunTimeMs[0])).toBe('2011-07-01T00:10:33.960Z');
  expect(data?.sums.ghiKwhM2).toBeCloseTo(21.945, 9);
  expect(data?.sums.dniKwhM2).toBeCloseTo(19.57682, 9);
  expect(data?.sums.dhiKwhM2).toBeCloseTo(8.439, 9);
  expect(data?.sums.meanAirC).toBeCloseTo(21.6717, 4);
  expect(data?.sums.meanWindMS).toBeCloseTo(1.825, 9);
  expect(Object.is(data?.dni[0], 0)).toBe(true); // the file writes −0.0
  expect(data?.ghi).toHaveLength(72); // the legend is not data
});

test('PVGIS, older head: the missing offset is measured on the columns', () => {
  const reading = readPvgis(excerpt('piedmont-old-head-3-days.pvgis.csv'));
  expect(said(reading, 'time-offset-unknown')).toContain('The head gives no time offset of the radiation.');
  // the satellite of this series passes about 0.17 h after the stamp
  expect(Math.abs((reading.data?.sunShiftH ?? 0) - 0.176)).toBeLessThan(0.03);
  expect(reading.data?.sums.ghiKwhM2).toBeCloseTo(22.089, 9);
});

test('PVGIS: tabs after the colon are blanks too', () => {
  const { data } = readPvgis(piedmont.replace('(decimal degrees): 45.000', '(decimal degrees):\t45.000'));
  expect(data?.place?.latitudeDeg).toBe(45);
});

test('PVGIS: values on a tilted plane are never taken as horizontal', () => {
  const tilted =
    'Latitude (decimal degrees): 45\nLongitude (decimal degrees): 8\nSlope: 30 deg.\ntime,P,G(i),H_sun,T2m,WS10m,Int\n20160101:0810,1,2,3,4,5,0\n';
  const reading = readWeatherFile(tilted);
  expect(reading.data).toBeUndefined();
  expect(said(reading, 'tilted-plane')).toContain('These are values for a tilted plane. Horizontal values are needed.');
});

test('PVGIS: JSON holds the same as CSV', () => {
  const [, ...rows] = piedmont.slice(piedmont.indexOf('time(UTC)')).split('\n\n')[0]?.split('\n') ?? [];
  const names = ['time(UTC)', 'T2m', 'RH', 'G(h)', 'Gb(n)', 'Gd(h)', 'IR(h)', 'WS10m', 'WD10m', 'SP'];
  const records = rows.map((row) =>
    Object.fromEntries(row.split(',').map((v, i) => [names[i], i === 0 ? v : Number(v)])),
  );
  const location = { latitude: 45, longitude: 8, elevation: 250, irradiance_time_offset: 0.1761 };
  const reading = readWeatherFile(JSON.stringify({ inputs: { location }, outputs: { tmy_hourly: records } }));
  expect(reading.what).toBe('pvgis-json');
  expect(reading.data?.sums).toEqual(readPvgis(piedmont).data?.sums);
  expect(reading.data?.sunTimeMs).toEqual(readPvgis(piedmont).data?.sunTimeMs);
});

test('an error of the service is passed on in its own words', () => {
  const json = readWeatherFile('{"message": "Location over the sea. Please, select another location", "status": 400}');
  expect(said(json, 'service-error')).toContain(
    'The file holds an error message from the service: Location over the sea.',
  );
  const page = readWeatherFile('<!DOCTYPE html><html><head><title>503 Busy</title></head></html>');
  expect(said(page, 'service-error')).toContain('503 Busy');
  expect(readWeatherFile('100,NEM12,202506010000,MDA,RET').counts).toEqual({ 'not-weather': 1 });
});

test('the plain hourly table: instants and months as written, checked against the sun when the place is given', () => {
  const alone = readWeatherFile(excerptBytes('greensboro-3-days.hourly.csv'));
  expect(said(alone, 'place-not-said')).toContain('does not say where it was taken');
  const { data } = alone;
  expect(iso(data?.sunTimeMs[0])).toBe('1988-01-01T05:30:00.000Z');
  expect([...(data?.month ?? [])].every((month) => month === 1)).toBe(true);
  expect(data?.sums.ghiKwhM2).toBeCloseTo(3.844, 9);
  expect(data?.sums.meanAirC).toBeCloseTo(3.34444, 5);

  const wrong = readHourlyWeather(hourly, { place: { latitudeDeg: 36.1, longitudeDeg: 79.95 } });
  expect(said(wrong, 'place-doubtful')).toContain('the longitude has lost its sign');
  const right = readHourlyWeather(hourly, { place: { latitudeDeg: 36.1, longitudeDeg: -79.95 } });
  expect(said(right, 'place-doubtful')).toBe('');
});

test('the plain hourly table: a missing row and a bad stamp are named', () => {
  const lines = hourly.split('\n');
  const gap = readHourlyWeather(lines.toSpliced(10, 1).join('\n'));
  expect(said(gap, 'hour-missing')).toContain('1 January, hour 10 is missing.');
  const bad = readHourlyWeather(lines.with(5, (lines[5] as string).replace('Z', '')).join('\n'));
  expect(said(bad, 'row-date')).toContain('Line 6 begins with 1988-01-01T09:30:00,1.');
});

test('UTC months become local months and the turn of the year comes round', () => {
  // 1 July 00:10 UTC is 30 June, 16:10 at UTC−8: a July file then begins in June
  const year = readPvgis(piedmont).data;
  if (!year) throw new Error('the excerpt is read above');
  const west = inLocalTime(year, -8);
  expect([...west.month.slice(0, 9)]).toEqual([6, 6, 6, 6, 6, 6, 6, 6, 7]);
  expect(west.sums).toEqual(year.sums);

  const december = {
    ...year,
    month: year.month.map((_, i) => (i < 36 ? 1 : 12)),
    sunTimeMs: year.sunTimeMs.map((_, i) =>
      Date.UTC(i < 36 ? 2018 : 2016, i < 36 ? 0 : 11, i < 36 ? 1 : 30, i < 36 ? i : i - 24),
    ),
  };
  const east = inLocalTime(december, 10);
  // 31 December 14:00 to 23:00 UTC is already New Year's Day at UTC+10
  expect([...east.month.slice(0, 11)]).toEqual([1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 1]);
  expect(iso(east.sunTimeMs[0])).toBe('2016-12-31T14:00:00.000Z');
  expect(iso(east.sunTimeMs[10])).toBe('2018-01-01T00:00:00.000Z');
});
