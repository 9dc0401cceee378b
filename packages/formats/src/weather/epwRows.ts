import type { RemarkLog } from '../reading/remarkLog.ts';
import { plainNumber, splitFields } from '../text/fields.ts';
import { HOUR_MS, isDate, isYear } from './calendar.ts';
import { USUAL } from './columns.ts';
import { takeValue } from './takeValue.ts';
import type { HourRow, WeatherReadOptions } from './weatherYear.ts';

const LEAST_FIELDS = 22;

/** Field (counted from 0) and code for missing of each quantity. */
const RULES = {
  ghi: { ...USUAL.ghi, at: 13, missingFrom: 9999 },
  dni: { ...USUAL.dni, at: 14, missingFrom: 9999 },
  dhi: { ...USUAL.dhi, at: 15, missingFrom: 9999 },
  airC: { ...USUAL.airC, at: 6, missingFrom: 99.9 },
  windMS: { ...USUAL.windMS, at: 21, missingFrom: 999 },
  albedo: { ...USUAL.albedo, at: 32, missingFrom: 999 },
} as const;

/** Rows read and hours left out, so that a gap is not remarked on twice. */
export interface ReadRows {
  readonly rows: readonly HourRow[];
  readonly leftOut: readonly Pick<HourRow, 'month' | 'day' | 'hour'>[];
}

interface Stamp {
  readonly year: number;
  readonly month: number;
  readonly day: number;
  readonly hour: number;
}

/** Reads the hours of an EPW file from line `from` (counted from 0) on. */
export function epwRows(
  lines: readonly string[],
  from: number,
  separator: ',' | ';',
  utcOffsetH: number,
  options: WeatherReadOptions,
  log: RemarkLog,
): ReadRows {
  const cut = (line: string) => {
    const fields = splitFields(line, separator);
    return separator === ';' ? fields.map((field) => field.replace(',', '.')) : fields;
  };
  const table = lines.slice(from).map(cut);
  const begin = hoursBegin(table, options, log);
  const rows: HourRow[] = [];
  const leftOut: Stamp[] = [];
  for (const [index, fields] of table.entries()) {
    const line = from + index + 1;
    if (fields.length === 1 && fields[0] === '') continue;
    const stamp = epwStamp(fields, begin);
    if (fields.length < LEAST_FIELDS) {
      if (stamp) leftOut.push(stamp);
      remarkShort(line, fields.length, log);
    } else if (stamp === undefined) remarkStamp(line, fields, log);
    else rows.push(hourRow(fields, stamp, line, utcOffsetH, log));
  }
  return { rows, leftOut };
}

/** 1 when the labels are the beginnings of hours (0 to 23), else 0. */
function hoursBegin(table: readonly string[][], options: WeatherReadOptions, log: RemarkLog): 0 | 1 {
  const zeros = table.some((fields) => plainNumber(fields[3]) === 0);
  const last = table.some((fields) => plainNumber(fields[3]) === 24);
  const looksBegin = zeros && !last;
  const begin = options.hourLabels === undefined ? looksBegin : options.hourLabels === 'begin';
  if (looksBegin) {
    log.add({
      severity: 'warn',
      code: 'hours-from-0',
      field: 'hour',
      found: 'Hours run 0 to 23; EPW uses 1 to 24.',
      wanted: 'Hour 1 is the hour that ends at one o’clock.',
      done: begin ? 'They were read as the beginnings of the hours.' : 'They were read as the ends of the hours.',
      mend: 'Say whether a label is the beginning or the end of its hour.',
    });
    log.assume({
      key: 'hourLabels',
      value: begin ? 'begin' : 'end',
      choices: ['begin', 'end'],
      says: 'Read as hour-beginning?',
    });
  }
  return begin ? 1 : 0;
}

function epwStamp(fields: readonly string[], begin: 0 | 1): Stamp | undefined {
  const [year, month, day, label] = fields.slice(0, 4).map(plainNumber);
  if (year === undefined || month === undefined || day === undefined || label === undefined) return undefined;
  const hour = label + begin;
  const real = isDate(month, day) && Number.isInteger(hour) && hour >= 0 && hour <= 24;
  if (!real || !isYear(year)) return undefined;
  if (hour > 0) return { year, month, day, hour };
  // the end of hour 0 is the end of the day before
  const before = new Date(Date.UTC(year, month - 1, day) - 24 * HOUR_MS);
  return { year: before.getUTCFullYear(), month: before.getUTCMonth() + 1, day: before.getUTCDate(), hour: 24 };
}

function hourRow(fields: readonly string[], stamp: Stamp, line: number, utcOffsetH: number, log: RemarkLog): HourRow {
  const value = (key: keyof typeof RULES) => takeValue(fields[RULES[key].at], RULES[key], line, log);
  const { year, month, day, hour } = stamp;
  return {
    line,
    month,
    day,
    hour,
    sunTimeMs: Date.UTC(year, month - 1, day) + (hour - 0.5 - utcOffsetH) * HOUR_MS,
    ghi: value('ghi'),
    dni: value('dni'),
    dhi: value('dhi'),
    airC: value('airC'),
    windMS: value('windMS'),
    albedo: value('albedo'),
  };
}

function remarkShort(line: number, count: number, log: RemarkLog): void {
  log.add({
    severity: 'drop',
    code: 'row-short',
    line,
    found: `Line ${line} has ${count} fields.`,
    wanted: `At least ${LEAST_FIELDS} are needed.`,
    done: 'The hour was left out.',
  });
}

function remarkStamp(line: number, fields: readonly string[], log: RemarkLog): void {
  log.add({
    severity: 'drop',
    code: 'row-date',
    line,
    found: `Line ${line} begins with ${fields.slice(0, 4).join(',')}.`,
    wanted: 'Year, month, day and hour 1 to 24 should stand there.',
    done: 'The hour was left out.',
  });
}
