import type { Reading } from '../reading/remark.ts';
import { type RemarkLog, remarkLog } from '../reading/remarkLog.ts';
import { plainNumber, splitFields } from '../text/fields.ts';
import { textLines } from '../text/lines.ts';
import { HOUR_MS, isDate, isYear } from './calendar.ts';
import { type ColumnRules, checkColumns, lineTaker, USUAL } from './columns.ts';
import { placeNumber, settlePlace } from './epwPlace.ts';
import type { ReadRows } from './epwRows.ts';
import { finishYear } from './finishYear.ts';
import type { HourRow, WeatherPlace, WeatherReadOptions, WeatherYear } from './weatherYear.ts';

/** Missing is −9900 or −99 (from memory). */
const RULES: ColumnRules = {
  ghi: { ...USUAL.ghi, column: 'GHI (W/m^2)', missingTo: -99 },
  dni: { ...USUAL.dni, column: 'DNI (W/m^2)', missingTo: -99 },
  dhi: { ...USUAL.dhi, column: 'DHI (W/m^2)', missingTo: -99 },
  airC: { ...USUAL.airC, column: 'Dry-bulb (C)', missingTo: -99 },
  windMS: { ...USUAL.windMS, column: 'Wspd (m/s)', missingTo: -99 },
  albedo: { ...USUAL.albedo, column: 'Alb (unitless)', missingTo: -99 },
};

/**
 * Reads a TMY3 CSV file: a typical year of local standard time, 01:00 to 24:00, each radiation the
 * mean of the sixty minutes before the stamp; 24:00 belongs to the day it is written on.
 *
 * Albedo 0 stands for "not known" in the published files and is left out.
 *
 * Source: Wilcox and Marion 2008, Users Manual for TMY3 Data Sets (from memory), and the files.
 */
export function readTmy3(text: string, options: WeatherReadOptions = {}): Reading<WeatherYear> {
  const log = remarkLog();
  const lines = textLines(text);
  const head = splitFields(lines[0] ?? '');
  const place = tmy3Place(head, options, log);
  const names = splitFields(lines[1] ?? '');
  checkColumns(names, RULES, 2, log);
  if (log.stopped()) return log.close<WeatherYear>('tmy3', undefined);

  const hours = tmy3Rows(lines, names, place?.utcOffsetH ?? 0, log);
  return log.close('tmy3', finishYear(hours, place, `TMY3 ${head[0]}`, options, log));
}

/** `station,"name",state,offset,latitude,longitude,elevation`. */
function tmy3Place(head: readonly string[], options: WeatherReadOptions, log: RemarkLog): WeatherPlace | undefined {
  const said = {
    name: [head[1], head[2]].filter((part) => part).join(', '),
    utcOffsetH: placeNumber('utcOffsetH', head[3]),
    latitudeDeg: placeNumber('latitudeDeg', head[4]),
    longitudeDeg: placeNumber('longitudeDeg', head[5]),
    elevationM: placeNumber('elevationM', head[6]),
  };
  const known = Object.fromEntries(Object.entries(said).filter(([, value]) => value !== undefined));
  return settlePlace(known, options.place, head.join(','), log);
}

function tmy3Rows(lines: readonly string[], names: readonly string[], utcOffsetH: number, log: RemarkLog): ReadRows {
  const take = lineTaker(names, RULES, log);
  const rows: HourRow[] = [];
  for (let at = 2; at < lines.length; at++) {
    const line = at + 1;
    const fields = splitFields(lines[at] as string);
    const stamp = tmy3Stamp(fields[0] ?? '', fields[1] ?? '');
    if (stamp === undefined || fields.length < names.length / 2) {
      log.add({
        severity: 'drop',
        code: 'row-date',
        line,
        found: `Line ${line} begins with ${fields.slice(0, 2).join(',').slice(0, 60)} and has ${fields.length} fields.`,
        wanted: `MM/DD/YYYY,HH:MM and ${names.length} fields should stand there.`,
        done: 'The hour was left out.',
      });
      continue;
    }
    const values = take(fields, line);
    const albedo = values.albedo === 0 ? undefined : values.albedo;
    const { year, month, day, hour } = stamp;
    const sunTimeMs = Date.UTC(year, month - 1, day) + (hour - 0.5 - utcOffsetH) * HOUR_MS;
    rows.push({ line, month, day, hour, sunTimeMs, ...values, albedo });
  }
  return { rows, leftOut: [] };
}

function tmy3Stamp(date: string, time: string): { year: number; month: number; day: number; hour: number } | undefined {
  const [, month, day, year] = (/^(\d{1,2})\/(\d{1,2})\/(\d{4})$/.exec(date) ?? []).map(plainNumber);
  const hour = plainNumber(/^(\d{1,2}):00$/.exec(time)?.[1]);
  if (year === undefined || month === undefined || day === undefined || hour === undefined) return undefined;
  return isYear(year) && isDate(month, day) && hour >= 1 && hour <= 24 ? { year, month, day, hour } : undefined;
}
