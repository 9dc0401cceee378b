import type { Reading } from '../reading/remark.ts';
import { type RemarkLog, remarkLog } from '../reading/remarkLog.ts';
import { plainNumber, splitFields } from '../text/fields.ts';
import { textLines } from '../text/lines.ts';
import { epwPlace } from './epwPlace.ts';
import { epwRows } from './epwRows.ts';
import { finishYear } from './finishYear.ts';
import type { WeatherReadOptions, WeatherYear } from './weatherYear.ts';

const HEAD = [
  'LOCATION',
  'DESIGN CONDITIONS',
  'TYPICAL/EXTREME PERIODS',
  'GROUND TEMPERATURES',
  'HOLIDAYS/DAYLIGHT SAVINGS',
  'COMMENTS 1',
  'COMMENTS 2',
  'DATA PERIODS',
];

/**
 * Reads an EPW file: an hourly typical weather year.
 *
 * Hours are local standard time of the LOCATION line and label the hour that ends there, so the
 * sun stands at the label less half an hour; radiation in Wh/m² over the hour is mean W/m².
 * The radiation is held against the sun (`checkSun`), and a measured shift is carried in `sunTimeMs`.
 *
 * Reads hourly files only. Wind is taken as measured, normally at 10 m.
 *
 * Source: EnergyPlus Weather File data dictionary (from memory), and the files themselves.
 */
export function readEpw(text: string, options: WeatherReadOptions = {}): Reading<WeatherYear> {
  const log = remarkLog();
  const lines = textLines(text);
  const separator = epwSeparator(lines[0] ?? '', log);
  if (log.stopped()) return log.close<WeatherYear>('epw', undefined);

  const { place, sourceText } = epwPlace(splitFields(lines[0] ?? '', separator), options.place, separator, log);
  const dataFrom = skipHead(lines, separator, log);
  if (log.stopped()) return log.close<WeatherYear>('epw', undefined);

  const hours = epwRows(lines, dataFrom, separator, place?.utcOffsetH ?? 0, options, log);
  return log.close('epw', finishYear(hours, place, sourceText, options, log));
}

function epwSeparator(first: string, log: RemarkLog): ',' | ';' {
  const mark = /^"?LOCATION"?\s*([,;])/i.exec(first.trim())?.[1];
  if (mark === undefined) {
    log.add({
      severity: 'stop',
      code: 'no-location',
      line: 1,
      found: 'This is not an EPW file: the first line should begin with LOCATION.',
      wanted: 'LOCATION gives latitude, longitude and time.',
      done: 'Nothing was read.',
      mend: 'Fetch the file again, or put its LOCATION line back.',
    });
  }
  if (mark !== ';') return ',';
  log.add({
    severity: 'warn',
    code: 'semicolons',
    line: 1,
    found: 'Fields are separated by semicolons.',
    wanted: 'EPW uses commas.',
    done: 'They were read so, with a decimal comma where one stands.',
  });
  log.assume({ key: 'separator', value: ';', says: 'Fields are separated by semicolons.' });
  return ';';
}

/** First line of data, counted from 0; remarks on head lines that are not there. */
function skipHead(lines: readonly string[], separator: string, log: RemarkLog): number {
  const seen = new Set<string>();
  let at = 0;
  for (; at < lines.length; at++) {
    const fields = splitFields(lines[at] as string, separator);
    const name = (fields[0] ?? '').toUpperCase();
    if (plainNumber(name) !== undefined) break;
    seen.add(name);
    if (name === 'DATA PERIODS') checkPeriods(fields, at + 1, log);
  }
  const absent = HEAD.filter((name) => !seen.has(name));
  if (absent.length > 0) {
    log.add({
      severity: 'note',
      code: 'head-short',
      found: `The head has no line ${absent.join(', ')}.`,
      wanted: 'Eight head lines are usual.',
      done: 'They are not needed here.',
    });
  }
  return at;
}

function checkPeriods(fields: readonly string[], line: number, log: RemarkLog): void {
  const perHour = plainNumber(fields[2]);
  if (perHour === undefined || perHour === 1) return;
  log.add({
    severity: 'stop',
    code: 'not-hourly',
    line,
    field: 'DATA PERIODS',
    found: `The file has ${perHour} records an hour.`,
    wanted: 'One record an hour is read.',
    done: 'Nothing was read.',
    mend: 'Choose the hourly form of this file.',
  });
}
