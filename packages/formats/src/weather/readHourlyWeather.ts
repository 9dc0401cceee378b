import type { Reading } from '../reading/remark.ts';
import { type RemarkLog, remarkLog } from '../reading/remarkLog.ts';
import { plainNumber, splitFields } from '../text/fields.ts';
import { textLines } from '../text/lines.ts';
import { HOUR_MS, isYear } from './calendar.ts';
import { type ColumnRules, checkColumns, lineTaker, USUAL } from './columns.ts';
import { settlePlace } from './epwPlace.ts';
import { finishYear } from './finishYear.ts';
import type { HourRow, WeatherReadOptions, WeatherYear } from './weatherYear.ts';

const RULES: ColumnRules = {
  ghi: { ...USUAL.ghi, column: 'ghi' },
  dni: { ...USUAL.dni, column: 'dni' },
  dhi: { ...USUAL.dhi, column: 'dhi' },
  airC: { ...USUAL.airC, column: 'air_c' },
  windMS: { ...USUAL.windMS, column: 'wind_m_s' },
  albedo: { ...USUAL.albedo, column: 'albedo' },
};

/**
 * Reads the plain hourly table `sun_time_utc,month,ghi,dni,dhi,air_c,wind_m_s`: each row an hour,
 * the instant for the sun in UTC, the month it is booked to. Columns may stand in any order,
 * `albedo` may follow.
 *
 * The table does not say where it was taken: give `options.place`, else the radiation is not
 * held against the sun. Rows are taken in the order they stand; the hours of a month are counted.
 */
export function readHourlyWeather(text: string, options: WeatherReadOptions = {}): Reading<WeatherYear> {
  const log = remarkLog();
  const lines = textLines(text);
  const names = splitFields(lines[0] ?? '').map((name) => name.toLowerCase());
  checkColumns(names, RULES, 1, log);
  const place = options.place && settlePlace({ name: 'place given by hand', utcOffsetH: 0 }, options.place, '', log);
  if (log.stopped()) return log.close<WeatherYear>('hourly-weather', undefined);
  if (place === undefined) {
    log.add({
      severity: 'note',
      code: 'place-not-said',
      found: 'The table does not say where it was taken.',
      wanted: 'Latitude and longitude are needed to place the sun.',
      done: 'It was read without being held against the sun.',
      mend: 'Give the place.',
    });
  }
  const rows = hourlyRows(lines, names, log);
  const read = { rows, leftOut: [] };
  return log.close('hourly-weather', finishYear(read, place, 'hourly table', options, log));
}

function hourlyRows(lines: readonly string[], names: readonly string[], log: RemarkLog): HourRow[] {
  const take = lineTaker(names, RULES, log);
  const timeAt = names.indexOf('sun_time_utc');
  const monthAt = names.indexOf('month');
  const rows: HourRow[] = [];
  let first: { month: number; timeMs: number } | undefined;
  for (let at = 1; at < lines.length; at++) {
    const line = at + 1;
    const fields = splitFields(lines[at] as string);
    const timeMs = utcInstant(fields[timeAt] ?? '');
    const month = plainNumber(fields[monthAt]) ?? (timeMs === undefined ? 0 : new Date(timeMs).getUTCMonth() + 1);
    if (timeMs === undefined || !Number.isInteger(month) || month < 1 || month > 12) {
      remarkRow(line, fields, log);
      continue;
    }
    if (first?.month !== month) first = { month, timeMs };
    const hours = Math.round((timeMs - first.timeMs) / HOUR_MS);
    const [day, hour] = [Math.floor(hours / 24) + 1, (((hours % 24) + 24) % 24) + 1];
    if (day < 1 || day > 31) remarkRow(line, fields, log);
    else rows.push({ line, month, day, hour, sunTimeMs: timeMs, ...take(fields, line) });
  }
  return rows;
}

/** Milliseconds of `2005-01-01T07:30:00Z`; undefined for anything else, also for local stamps. */
function utcInstant(field: string): number | undefined {
  if (!/^\d{4}-\d{2}-\d{2}T\d{2}:\d{2}(:\d{2}(\.\d+)?)?Z$/.test(field)) return undefined;
  const timeMs = Date.parse(field);
  return isYear(new Date(timeMs).getUTCFullYear()) ? timeMs : undefined;
}

function remarkRow(line: number, fields: readonly string[], log: RemarkLog): void {
  log.add({
    severity: 'drop',
    code: 'row-date',
    line,
    found: `Line ${line} begins with ${fields.slice(0, 2).join(',').slice(0, 60)}.`,
    wanted: 'An instant in UTC like 2005-01-01T07:30:00Z and a month should stand there, in order.',
    done: 'The hour was left out.',
  });
}
