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

const RULES: ColumnRules = {
  ghi: { ...USUAL.ghi, column: 'G(h)' },
  dni: { ...USUAL.dni, column: 'Gb(n)' },
  dhi: { ...USUAL.dhi, column: 'Gd(h)' },
  airC: { ...USUAL.airC, column: 'T2m' },
  windMS: { ...USUAL.windMS, column: 'WS10m' },
  albedo: { ...USUAL.albedo, column: 'albedo' },
};

/**
 * Reads a typical year of the European Commission's PVGIS service, CSV form, old and new head.
 *
 * Stamps are UTC, hours 00 to 23. Radiation belongs to the instant stamp + time offset, where
 * the sun is taken; temperature and wind to the stamp. Months are those of UTC: `inLocalTime`
 * books them to local months. The older head gives no time offset: it is measured on the file
 * (closure of the three columns) and named among the assumptions.
 *
 * A file of values on a tilted plane is refused: they must never be taken as horizontal.
 */
export function readPvgis(text: string, options: WeatherReadOptions = {}): Reading<WeatherYear> {
  const log = remarkLog();
  const lines = textLines(text);
  const at = lines.findIndex((line) => /^time(\(UTC\))?,/i.test(line.trim()));
  const names = splitFields(lines[at] ?? '');
  if (at < 0 || !names.includes('G(h)')) remarkPlane(at, names, log);
  else checkColumns(names, RULES, at + 1, log);

  const head = pvgisHead(lines.slice(0, Math.max(0, at)));
  const place = pvgisPlace(head, options, log);
  if (log.stopped()) return log.close<WeatherYear>('pvgis-tmy', undefined);

  const offsetH = plainNumber(head.get('irradiance time offset (h)'));
  const hours = pvgisRows(lines, at, names, offsetH ?? 0, log);
  const data = finishYear(hours, place, 'PVGIS typical year', options, log, offsetH !== undefined);
  if (data && offsetH === undefined) remarkOffset(data, log);
  return log.close('pvgis-tmy', data);
}

/** Lines `name: value` of the head, names in lower case. */
function pvgisHead(lines: readonly string[]): ReadonlyMap<string, string> {
  const pairs = lines.map((line) => line.split(':')).filter((parts) => parts.length === 2);
  return new Map(pairs.map(([name, value]) => [(name as string).trim().toLowerCase(), (value as string).trim()]));
}

function pvgisPlace(
  head: ReadonlyMap<string, string>,
  options: WeatherReadOptions,
  log: RemarkLog,
): WeatherPlace | undefined {
  const latitudeDeg = placeNumber('latitudeDeg', head.get('latitude (decimal degrees)'));
  const longitudeDeg = placeNumber('longitudeDeg', head.get('longitude (decimal degrees)'));
  const elevationM = placeNumber('elevationM', head.get('elevation (m)'));
  const said = {
    name: `${latitudeDeg}, ${longitudeDeg}`,
    utcOffsetH: 0,
    ...(latitudeDeg !== undefined && { latitudeDeg }),
    ...(longitudeDeg !== undefined && { longitudeDeg }),
    ...(elevationM !== undefined && { elevationM }),
  };
  return settlePlace(said, options.place, [...head.keys()].join('; '), log);
}

function pvgisRows(
  lines: readonly string[],
  header: number,
  names: readonly string[],
  offsetH: number,
  log: RemarkLog,
): ReadRows {
  const take = lineTaker(names, RULES, log);
  const rows: HourRow[] = [];
  for (let at = header + 1; at < lines.length; at++) {
    const text = lines[at] as string;
    // a blank line ends the table; the legend and the owner's line follow
    if (text.trim() === '') break;
    const fields = splitFields(text);
    const stamp = pvgisStamp(fields[0] ?? '');
    if (stamp === undefined || fields.length < names.length) {
      log.add({
        severity: 'drop',
        code: 'row-date',
        line: at + 1,
        found: `Line ${at + 1} begins with ${(fields[0] ?? '').slice(0, 40)} and has ${fields.length} fields.`,
        wanted: `A stamp YYYYMMDD:HHMM and ${names.length} fields should stand there.`,
        done: 'The hour was left out.',
      });
      continue;
    }
    const { month, day, hour, timeMs } = stamp;
    rows.push({ line: at + 1, month, day, hour, sunTimeMs: timeMs + offsetH * HOUR_MS, ...take(fields, at + 1) });
  }
  return { rows, leftOut: [] };
}

/** `20180101:0010`; the hour is that which begins there. */
function pvgisStamp(stamp: string): { month: number; day: number; hour: number; timeMs: number } | undefined {
  const match = /^(\d{4})(\d{2})(\d{2}):(\d{2})(\d{2})$/.exec(stamp);
  if (!match) return undefined;
  const [year, month, day, hour, minute] = match.slice(1).map(Number) as [number, number, number, number, number];
  if (!isYear(year) || !isDate(month, day) || hour > 23 || minute > 59) return undefined;
  return { month, day, hour: hour + 1, timeMs: Date.UTC(year, month - 1, day, hour, minute) };
}

function remarkPlane(at: number, names: readonly string[], log: RemarkLog): void {
  const tilted = names.some((name) => /\(i\)$/.test(name));
  log.add({
    severity: 'stop',
    code: tilted ? 'tilted-plane' : 'column-missing',
    line: Math.max(1, at + 1),
    found: tilted
      ? 'These are values for a tilted plane.'
      : 'The file has no column G(h) for global horizontal radiation.',
    wanted: 'Horizontal values are needed.',
    done: 'Nothing was read.',
    mend: 'Ask the service for a typical year, or for hourly values on the horizontal with their parts.',
  });
}

function remarkOffset(year: WeatherYear, log: RemarkLog): void {
  const minutes = Math.round(year.sunShiftH * 60);
  log.add({
    severity: 'note',
    code: 'time-offset-unknown',
    found: 'The head gives no time offset of the radiation.',
    wanted: 'Newer files say how long after the stamp a value belongs.',
    done: `The sun is taken ${minutes} minutes after the stamp, which fits the three columns best.`,
  });
}
