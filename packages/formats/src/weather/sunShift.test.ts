import { clearSkyHaurwitz1945, skySplitErbs1982, sunAtInstants } from '@eaveline/physics';
import { expect, test } from 'vitest';
import { said } from '../../test/excerpt.ts';
import { remarkLog } from '../reading/remarkLog.ts';
import { daysInMonth, HOUR_MS, hourOfYear, nameOfHour } from './calendar.ts';
import { measureShift } from './checkShift.ts';
import { finishYear } from './finishYear.ts';
import { sunClock } from './sunClock.ts';
import { closureShiftH, energyCentreH, envelopeShiftH } from './sunShift.ts';
import type { HourRow, WeatherPlace } from './weatherYear.ts';

const place: WeatherPlace = { name: 'made', latitudeDeg: -35, longitudeDeg: 149, elevationM: 600, utcOffsetH: 10 };

/**
 * A year made from a sun that is `lateH` behind its labels: clear sky times a cloud factor that
 * repeats every seven days, the direct column from a sun that is `directLateH` behind.
 */
function madeYear(lateH: number, directLateH: number, afternoonClouds = 0): HourRow[] {
  const stamps: { month: number; day: number; hour: number; timeMs: number }[] = [];
  for (let month = 1; month <= 12; month++) {
    for (let day = 1; day <= daysInMonth(month, false); day++) {
      for (let hour = 1; hour <= 24; hour++) {
        stamps.push({ month, day, hour, timeMs: Date.UTC(2019, month - 1, day) + (hour - 10.5) * HOUR_MS });
      }
    }
  }
  const zenith = (hoursLate: number) =>
    sunAtInstants(
      stamps.map(({ timeMs }) => timeMs - hoursLate * HOUR_MS),
      place,
    ).apparentZenithDeg;
  const [truth, direct] = [zenith(lateH), zenith(directLateH)];
  return stamps.map(({ month, day, hour, timeMs }, i) => {
    const zenithDeg = truth[i] as number;
    const cloud = [1, 0.9, 0.3, 1, 0.6, 0.2, 0.97][day % 7] as number;
    const damp = hour > 13 ? 1 - afternoonClouds * (day % 3 === 0 ? 1 : 0) : 1;
    const ghi = zenithDeg < 90 ? clearSkyHaurwitz1945(zenithDeg) * cloud * damp : 0;
    const { dhi } = skySplitErbs1982({
      ghi,
      zenithDeg,
      dayOfYear: Math.floor(hourOfYear(month, day, 1, false) / 24) + 1,
    });
    const cosDirect = Math.cos(((direct[i] as number) * Math.PI) / 180);
    const dni = cosDirect > 0.05 ? Math.max(0, ghi - dhi) / cosDirect : 0;
    const values = { ghi, dhi, dni, airC: 15 + (i % 7), windMS: 3 + (i % 5), albedo: undefined };
    return { line: i + 9, month, day, hour, sunTimeMs: timeMs, ...values };
  });
}

test.each([-1, -0.5, 0, 0.25, 0.5])('a year whose sun fits at %d h is measured so, by all three ways', (shiftH) => {
  const rows = madeYear(-shiftH, -shiftH);
  const clock = sunClock(rows, place);
  // closure is exact but for hours at the horizon; edge and centre feel the finite hour: two minutes
  expect(Math.abs((closureShiftH(rows, clock) ?? 9) - shiftH)).toBeLessThan(1 / 60);
  expect(Math.abs((envelopeShiftH(rows, clock) ?? 9) - shiftH)).toBeLessThan(2 / 60);
  expect(Math.abs((energyCentreH(rows, clock) ?? 9) + shiftH)).toBeLessThan(3 / 60);
});

test('clouds that prefer the afternoon move the centre of energy, not the clear edge', () => {
  const rows = madeYear(0, 0, 0.8);
  const clock = sunClock(rows, place);
  expect(energyCentreH(rows, clock)).toBeLessThan(-0.2);
  expect(Math.abs(envelopeShiftH(rows, clock) ?? 9)).toBeLessThan(2 / 60);
});

test('a direct column on another clock is rebuilt, and said', () => {
  const rows = madeYear(0.5, 0);
  const found = measureShift(rows, sunClock(rows, place));
  expect(found?.rebuildDirect).toBe(true);
  expect(Math.abs((found?.shiftH ?? 9) + 0.5)).toBeLessThan(2 / 60);

  const log = remarkLog();
  const year = finishYear({ rows, leftOut: [] }, place, 'made', {}, log);
  expect(said(log.close('made', year), 'direct-rebuilt')).toContain('follow different clocks');
  // rebuilt on the right clock it is the direct of a year whose columns agree
  const agreed = madeYear(0.5, 0.5);
  const noon = rows.findIndex(({ month, day, hour }) => month === 1 && day === 7 && hour === 13);
  expect(Math.abs((year?.dni[noon] as number) / (agreed[noon]?.dni as number) - 1)).toBeLessThan(0.01);
});

test('a whole made year in order gives an annual figure and no remark', () => {
  const log = remarkLog();
  const rows = madeYear(0, 0);
  const year = finishYear({ rows, leftOut: [] }, place, 'made', {}, log);
  const reading = log.close('made', year);
  expect(reading.remarks).toEqual([]);
  expect(year?.annual?.ghiKwhM2).toBeCloseTo(rows.reduce((sum, { ghi }) => sum + (ghi ?? 0), 0) / 1000, 6);
});

test('a year without its June has no annual figure, one without a few hours has', () => {
  const finish = (keep: (row: HourRow) => boolean) => {
    const log = remarkLog();
    const rows = madeYear(0, 0).filter(keep);
    return log.close('made', finishYear({ rows, leftOut: [] }, place, 'made', {}, log));
  };
  const noJune = finish(({ month }) => month !== 6);
  expect(noJune.data?.annual).toBeUndefined();
  expect(said(noJune, 'hour-missing')).toContain('720 hours are missing, 1 June, hour 1 to 30 June, hour 24.');
  expect(said(noJune, 'year-not-whole')).toContain('8040 of 8760 hours present, 1 January to 31 December.');
  expect(finish(({ line }) => line % 1000 !== 500).data?.annual).toBeDefined();
});

test('radiation missing for two months leaves the annual temperature but no annual radiation', () => {
  const log = remarkLog();
  const rows = madeYear(0, 0).map((row) =>
    row.month > 2 ? row : { ...row, ghi: undefined, dni: undefined, dhi: undefined },
  );
  const year = finishYear({ rows, leftOut: [] }, place, 'made', {}, log);
  expect(year?.annual?.ghiKwhM2).toBeUndefined();
  expect(year?.annual?.meanAirC).toBeDefined();
});

test('a year a third darker than the places around is doubted, with their names', () => {
  const dark = madeYear(0, 0).map((row) => ({
    ...row,
    ghi: (row.ghi ?? 0) * 0.6,
    dni: (row.dni ?? 0) * 0.6,
    dhi: (row.dhi ?? 0) * 0.6,
  }));
  const log = remarkLog();
  const year = finishYear({ rows: dark, leftOut: [] }, place, 'made', {}, log);
  // Wagga Wagga, 1781 kWh/m², lies 140 km west of 35 S 149 E
  expect(said(log.close('made', year), 'darker-than-around')).toMatch(
    /% less than the places around: .*Wagga Wagga \(14\d km\)/,
  );
});

test('a year in the wrong hemisphere is doubted: long winter days and dark summer evenings', () => {
  const log = remarkLog();
  const year = finishYear({ rows: madeYear(0, 0), leftOut: [] }, { ...place, latitudeDeg: 35 }, 'made', {}, log);
  expect(said(log.close('made', year), 'place-doubtful')).toContain('the latitude has lost its sign');
});

test('a year without dark days is doubted', () => {
  const log = remarkLog();
  const bright = madeYear(0, 0).map((row) => {
    const cloud = [1, 0.9, 0.3, 1, 0.6, 0.2, 0.97][row.day % 7] as number;
    return { ...row, ghi: (row.ghi ?? 0) / cloud, dni: (row.dni ?? 0) / cloud, dhi: (row.dhi ?? 0) / cloud };
  });
  const year = finishYear({ rows: bright, leftOut: [] }, place, 'made', {}, log);
  expect(said(log.close('made', year), 'no-dark-days')).toContain('Hardly a day is dark');
});

test('hours of the year by hand', () => {
  // January has 31 · 24 = 744 hours, so 1 February hour 1 is number 744 from 0
  expect(hourOfYear(2, 1, 1, false)).toBe(744);
  expect(hourOfYear(12, 31, 24, false)).toBe(8759);
  expect(hourOfYear(3, 1, 1, true)).toBe((31 + 29) * 24);
  expect(nameOfHour(50, false)).toBe('3 January, hour 3');
});
