import { expect, test } from 'vitest';
import { changeRows, excerpt, excerptBytes, said } from '../../test/excerpt.ts';
import { readEpw } from './readEpw.ts';
import { readWeatherFile } from './readWeatherFile.ts';

const boston = excerpt('boston-3-days.epw');

test('three days of Boston: place, instants, sums', () => {
  const reading = readWeatherFile(excerptBytes('boston-3-days.epw'));
  const year = reading.data;
  expect(reading.what).toBe('epw');
  expect(year?.place).toEqual({
    name: 'Boston Logan IntL Arpt, USA',
    latitudeDeg: 42.37,
    longitudeDeg: -71.02,
    elevationM: 6,
    utcOffsetH: -5,
  });
  // hour 1 of 4 January is 00:00 to 01:00 at UTC−5: the sun is taken at 05:30 UTC
  expect(new Date(year?.sunTimeMs[0] ?? 0).toISOString()).toBe('1976-01-04T05:30:00.000Z');
  // sums of fields 14, 15, 16 and means of fields 7 and 22 of the excerpt
  expect(year?.sums.ghiKwhM2).toBeCloseTo(6.009, 9);
  expect(year?.sums.dniKwhM2).toBeCloseTo(13.46, 9);
  expect(year?.sums.dhiKwhM2).toBeCloseTo(1.715, 9);
  expect(year?.sums.meanAirC).toBeCloseTo(-4.86667, 5);
  expect(year?.sums.meanWindMS).toBeCloseTo(7.05139, 5);
  expect(year?.covered).toEqual({ ghi: 72, dni: 72, dhi: 72, airC: 72, windMS: 72 });
  expect(year?.sunShiftH).toBe(0);
});

test('part of a year has no annual figure, and the file says which part it is', () => {
  const reading = readEpw(boston);
  expect(reading.data?.annual).toBeUndefined();
  expect(said(reading, 'year-not-whole')).toContain(
    '72 of 8760 hours present, 4 January to 6 January. An annual figure needs the whole year.',
  );
  expect(Object.keys(reading.counts)).toEqual(['year-not-whole']);
});

test('line ends, byte-order mark and a missing last line end change nothing', () => {
  const sums = readEpw(boston).data?.sums;
  for (const text of [boston.replaceAll('\r\n', '\n'), boston.replaceAll('\r\n', '\r'), `\ufeff${boston.trimEnd()}`]) {
    expect(readEpw(text).data?.sums).toEqual(sums);
  }
});

test('no LOCATION line: stop, with nothing read', () => {
  const reading = readWeatherFile(boston.split('\r\n').slice(1).join('\r\n'));
  expect(reading.data).toBeUndefined();
  expect(said(reading, 'no-location')).toContain('This is not an EPW file: the first line should begin with LOCATION.');
});

test('hours 0 to 23 are read as beginnings, said, and may be changed', () => {
  const from0 = changeRows(boston, (f) => f.with(3, String(Number(f[3]) - 1)));
  const reading = readEpw(from0);
  expect(said(reading, 'hours-from-0')).toContain('Hours run 0 to 23; EPW uses 1 to 24.');
  expect(reading.assumptions).toContainEqual({
    key: 'hourLabels',
    value: 'begin',
    choices: ['begin', 'end'],
    says: 'Read as hour-beginning?',
  });
  expect(reading.data?.sunTimeMs).toEqual(readEpw(boston).data?.sunTimeMs);

  const asEnds = readEpw(from0, { hourLabels: 'end', sunShiftH: 0 });
  expect(asEnds.data?.sunTimeMs[0]).toBe((reading.data?.sunTimeMs[0] ?? 0) - 3_600_000);
  // read so, the closure of the columns finds the hour that was lost
  expect(said(asEnds, 'sun-shift')).toMatch(/runs about an hour \((59|60|61) minutes\) ahead of the sun/);
});

test('codes for missing are left out, never averaged in', () => {
  // 24 hours of the second day without radiation, three without temperature, two without wind
  const holes = changeRows(boston, (f, row) => {
    const dark = row >= 24 && row < 48 ? f.with(13, '9999').with(14, '9999').with(15, '9999') : f;
    const cold = row < 3 ? dark.with(6, '99.9') : dark;
    return row < 2 ? cold.with(21, '999') : cold;
  });
  const reading = readEpw(holes);
  expect(said(reading, 'values-missing')).toContain(
    '24 hours have no radiation, 3 no temperature, 2 no wind speed. Every hour should have every value. ' +
      'They were left out; the sums cover 48 hours of radiation.',
  );
  expect(reading.data?.covered).toEqual({ ghi: 48, dni: 48, dhi: 48, airC: 69, windMS: 70 });
  expect(reading.data?.has.ghi[30]).toBe(0);
  // a code for missing is no odd value: nothing else is said
  expect(Object.keys(reading.counts).sort()).toEqual(['values-missing', 'year-not-whole']);
  // the first and third day alone: 1606 + 2042 Wh/m²
  expect(reading.data?.sums.ghiKwhM2).toBeCloseTo(3.648, 9);
});

test('latitude and longitude exchanged', () => {
  const reading = readEpw(boston.replace('42.37,-71.02', '-71.02,42.37'));
  expect(said(reading, 'place-doubtful')).toMatch(
    /At 71.02 S 42.37 E, UTC−5, the sun would be up when the file says night .* latitude and longitude are exchanged/,
  );
});

test('longitude without its sign', () => {
  const reading = readEpw(boston.replace('-71.02', '71.02'));
  expect(said(reading, 'place-doubtful')).toMatch(/centred 9\.\d h from solar noon.*the longitude has lost its sign/);
});

test('latitude without its sign shows in winter days that are too short', () => {
  const reading = readEpw(boston.replace('42.37', '-42.37'));
  expect(said(reading, 'place-doubtful')).toMatch(
    /sun would be up when the file says night.*latitude has lost its sign/,
  );
});

test('a missing hour is named', () => {
  const reading = readEpw(changeRows(boston, (f, row) => (row === 26 ? undefined : f)));
  expect(said(reading, 'hour-missing')).toContain('5 January, hour 3 is missing.');
});

test('a long gap is named once, by its ends', () => {
  const reading = readEpw(changeRows(boston, (f, row) => (row >= 20 && row < 30 ? undefined : f)));
  expect(said(reading, 'hour-missing')).toContain('10 hours are missing, 4 January, hour 21 to 5 January, hour 6.');
});

test('a short row is left out and its hour is not reported a second time', () => {
  const reading = readEpw(changeRows(boston, (f, row) => (row === 30 ? f.slice(0, 12) : f)));
  expect(said(reading, 'row-short')).toBe('Line 39 has 12 fields. At least 22 are needed. The hour was left out.');
  expect(said(reading, 'hour-missing')).toBe('');
  expect(reading.data?.ghi).toHaveLength(71);
});

test('repeated and disordered hours are put right and said', () => {
  const lines = boston.trimEnd().split('\r\n');
  const [row10, row11] = [lines[17] as string, lines[18] as string];
  const reading = readEpw(lines.with(17, row11).with(18, row10).concat(row10).join('\r\n'));
  expect(said(reading, 'out-of-order')).toContain('Line 19 is 4 January, hour 10, after 4 January, hour 11.');
  expect(said(reading, 'hour-repeated')).toContain('Line 81 repeats 4 January, hour 10, already given in line 19.');
  expect(reading.data?.ghi).toEqual(readEpw(boston).data?.ghi);
});

test('semicolons and decimal commas are read, and said', () => {
  const german = boston.replaceAll(',', ';').replaceAll(/(\d)\.(\d)/g, '$1,$2');
  const reading = readEpw(german);
  expect(said(reading, 'semicolons')).toContain('Fields are separated by semicolons.');
  expect(reading.data?.place?.latitudeDeg).toBe(42.37);
  expect(reading.data?.sums).toEqual(readEpw(boston).data?.sums);
});

test('radiation in kJ/m² is known by days brighter than the sun, and divided', () => {
  const scale = (f: string[], ...at: number[]) => at.reduce((g, n) => g.with(n, String(Number(g[n]) * 3.6)), f);
  const all = readEpw(changeRows(boston, (f) => scale(f, 13, 14, 15)));
  expect(said(all, 'radiation-in-kj')).toMatch(/the unit looks like kJ\/m².*All three columns were divided by 3\.6/);
  expect(all.data?.sums.dniKwhM2).toBeCloseTo(13.46, 6);

  const global = readEpw(changeRows(boston, (f) => scale(f, 13)));
  expect(said(global, 'radiation-in-kj')).toContain('The global column was divided by 3.6.');
  expect(global.data?.sums.ghiKwhM2).toBeCloseTo(6.009, 6);
  expect(global.data?.sums.dniKwhM2).toBeCloseTo(13.46, 9);

  const kept = readEpw(
    changeRows(boston, (f) => scale(f, 13)),
    { radiationUnit: 'Wh/m2' },
  );
  expect(kept.data?.sums.ghiKwhM2).toBeCloseTo(6.009 * 3.6, 6);
});

test('half an hour late: measured, said, and carried in the instants', () => {
  const reading = readEpw(excerpt('melbourne-late-3-days.epw'));
  expect(said(reading, 'sun-shift')).toContain('Radiation in this file runs half an hour behind the sun.');
  // full-year closure of this file is −29.6 min; three days are good to about two minutes
  expect(Math.abs((reading.data?.sunShiftH ?? 0) * 60 + 29.5)).toBeLessThan(2);
  expect(reading.data?.sums.ghiKwhM2).toBeCloseTo(25.006, 9);

  const kept = readEpw(excerpt('melbourne-late-3-days.epw'), { sunShiftH: 0 });
  expect(new Date(kept.data?.sunTimeMs[0] ?? 0).toISOString()).toBe('2012-01-03T14:30:00.000Z');
});

test('text where a number belongs, a date that is none, a temperature nowhere on Earth', () => {
  const reading = readEpw(
    changeRows(boston, (f, row) =>
      row === 5 ? f.with(6, 'n/a') : row === 6 ? f.with(1, '13') : row === 7 ? f.with(6, '75') : f,
    ),
  );
  expect(said(reading, 'not-a-number')).toContain('Line 14 has “n/a” for air temperature.');
  expect(said(reading, 'row-date')).toContain('Line 15 begins with 1976,13,4,7.');
  expect(said(reading, 'value-outside')).toContain('Line 16 has 75 for air temperature.');
});

test('finer than hourly is refused, not misread', () => {
  const reading = readEpw(boston.replace('DATA PERIODS,1,1,', 'DATA PERIODS,1,4,'));
  expect(reading.data).toBeUndefined();
  expect(said(reading, 'not-hourly')).toContain('The file has 4 records an hour.');
});

test('direct and diffuse that do not add up are said', () => {
  const reading = readEpw(changeRows(boston, (f) => f.with(15, String(Number(f[15]) * 1.5))));
  // diffuse is 1715 of 6009 Wh/m²: half as much again is 14 % too much
  expect(said(reading, 'columns-disagree')).toContain('Direct and diffuse together are 1.1');
});

test('a place may be given where the head has none', () => {
  const nameless = boston.replace('42.37,-71.02,-5.0,6.0', ',,,');
  expect(said(readEpw(nameless), 'no-place')).toContain('no usable latitude, longitude, offset from UTC');
  const given = readEpw(nameless, { place: { latitudeDeg: 42.37, longitudeDeg: -71.02, utcOffsetH: -5 } });
  expect(given.data?.sunTimeMs).toEqual(readEpw(boston).data?.sunTimeMs);
});
