import type { RemarkLog } from '../reading/remarkLog.ts';
import { HOUR_MS } from './calendar.ts';
import {
  checkBalance,
  checkDarkDays,
  dailyClearness,
  type RadiationFactors,
  radiationFactors,
} from './checkRadiation.ts';
import { measureShift, useShift } from './checkShift.ts';
import { checkValues } from './checkValues.ts';
import { compareWithNormals } from './compareWithNormals.ts';
import type { ReadRows } from './epwRows.ts';
import { orderHours } from './orderHours.ts';
import { placeDoubt } from './placeDoubt.ts';
import { type SunClock, sunClock } from './sunClock.ts';
import { takeYear } from './takeYear.ts';
import type { HourRow, WeatherPlace, WeatherReadOptions, WeatherYear } from './weatherYear.ts';

/** Fewer hours than this say nothing about the sun. */
const HOURS_TO_CHECK = 48;

/**
 * The common end of all weather readers: hours into order, radiation against the sun, unit and
 * shift settled, arrays and sums made.
 *
 * @param anchored  See `useShift`: false when the file does not say where in the hour its values stand.
 */
export function finishYear(
  read: ReadRows,
  place: WeatherPlace | undefined,
  sourceText: string,
  options: WeatherReadOptions,
  log: RemarkLog,
  anchored = true,
): WeatherYear | undefined {
  if (read.rows.length === 0) {
    log.add({
      severity: 'stop',
      code: 'no-hours',
      found: 'No hour of weather could be read.',
      wanted: 'Rows of hourly values should follow the head.',
      done: 'Nothing was read.',
    });
    return undefined;
  }
  const hours = orderHours(read.rows, read.leftOut, log);
  const settled =
    place && hours.rows.length >= HOURS_TO_CHECK ? againstSun(hours.rows, place, options, anchored, log) : undefined;
  const rows = settled?.rows ?? hours.rows;
  const year = takeYear({ ...hours, rows }, place, sourceText, settled?.shiftH ?? 0, log);
  checkValues(year, log);
  compareWithNormals(year, log);
  return year;
}

function againstSun(
  rows: readonly HourRow[],
  place: WeatherPlace,
  options: WeatherReadOptions,
  anchored: boolean,
  log: RemarkLog,
): { rows: readonly HourRow[]; shiftH: number } {
  const clock = sunClock(rows, place);
  const found = measureShift(rows, clock);
  if (placeDoubt(rows, clock, place, found?.shiftH ?? 0, log)) {
    const all = options.radiationUnit === 'kJ/m2' ? 1 / 3.6 : 1;
    const shiftH = options.sunShiftH ?? 0;
    return { rows: rows.map((row) => mended(row, { global: all, parts: all }, shiftH, undefined)), shiftH };
  }
  const { appliedH, rebuildDirect } = useShift(found, options.sunShiftH, anchored, log);
  const factors = radiationFactors(rows, clock, appliedH, options.radiationUnit, log);
  const direct = (row: HourRow, i: number) => (rebuildDirect ? directOf(row, clock, i, appliedH, factors) : undefined);
  const settled = rows.map((row, i) => mended(row, factors, appliedH, direct(row, i)));
  checkBalance(settled, clock, appliedH, log);
  checkDarkDays(dailyClearness(settled, clock, appliedH), log);
  return { rows: settled, shiftH: appliedH };
}

function mended(row: HourRow, factors: RadiationFactors, shiftH: number, direct: number | undefined): HourRow {
  const scaled = (value: number | undefined, factor: number) => (value === undefined ? undefined : value * factor);
  return {
    ...row,
    sunTimeMs: row.sunTimeMs + shiftH * HOUR_MS,
    ghi: scaled(row.ghi, factors.global),
    dni: direct ?? scaled(row.dni, factors.parts),
    dhi: scaled(row.dhi, factors.parts),
  };
}

/** Direct normal from global less diffuse, W/m²; none while the sun is within 5° of the horizon. */
function directOf(
  { ghi, dhi }: HourRow,
  clock: SunClock,
  i: number,
  shiftH: number,
  factors: RadiationFactors,
): number | undefined {
  if (ghi === undefined || dhi === undefined) return undefined;
  const cosZ = clock.cosZenith(i, shiftH);
  if (cosZ < 0.0872) return 0;
  const beam = ghi * factors.global - dhi * factors.parts;
  return Math.min(clock.etrNormal[i] as number, Math.max(0, beam / cosZ));
}
