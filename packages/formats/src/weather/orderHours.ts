import type { RemarkLog } from '../reading/remarkLog.ts';
import { dateOfHour, daysInMonth, hourOfYear, nameOfHour } from './calendar.ts';
import type { HourRow } from './weatherYear.ts';

/** Hours of a file in the order of the year, each once. */
export interface OrderedHours {
  readonly rows: readonly HourRow[];
  readonly hoursInYear: number;
  /** The first and last hours of the year are there, and nine tenths of those of every month. */
  readonly wholeYear: boolean;
}

/**
 * Puts hours in the order January to December, drops repeats, names gaps and says when the
 * year is not whole. The years written beside the months play no part: a typical year takes
 * its months from many.
 *
 * @param leftOut  Hours already remarked on (month, day, hour), so that they are not named twice.
 */
export function orderHours(
  rows: readonly HourRow[],
  leftOut: readonly Pick<HourRow, 'month' | 'day' | 'hour'>[],
  log: RemarkLog,
): OrderedHours {
  const leap = rows.some(({ month, day }) => month === 2 && day === 29);
  const hoursInYear = leap ? 8784 : 8760;
  const slot = (row: Pick<HourRow, 'month' | 'day' | 'hour'>) => hourOfYear(row.month, row.day, row.hour, leap);
  const table = new Array<HourRow | undefined>(hoursInYear).fill(undefined);
  const known = new Set(leftOut.filter((row) => leap || row.day !== 29 || row.month !== 2).map(slot));

  let before = -1;
  for (const row of rows) {
    const at = slot(row);
    if (table[at] !== undefined) remarkRepeat(row, table[at] as HourRow, nameOfHour(at, leap), log);
    else {
      if (at < before) remarkDisorder(row, nameOfHour(at, leap), nameOfHour(before, leap), log);
      table[at] = row;
      before = at;
    }
  }

  const present = table.filter((row) => row !== undefined);
  const first = table.findIndex((row) => row !== undefined);
  const last = table.findLastIndex((row) => row !== undefined);
  remarkGaps(table, known, first, last, leap, log);
  const wholeYear = first === 0 && last === hoursInYear - 1 && monthsWhole(present, leap);
  if (!wholeYear && present.length > 0) {
    log.add({
      severity: 'warn',
      code: 'year-not-whole',
      found: `${present.length} of ${hoursInYear} hours present, ${dateOfHour(first, leap)} to ${dateOfHour(last, leap)}.`,
      wanted: 'An annual figure needs the whole year.',
      done: 'No annual figure is given; the sums cover the hours present.',
    });
  }
  return { rows: present, hoursInYear, wholeYear };
}

/** Whether every month has nine tenths of its hours. */
function monthsWhole(rows: readonly HourRow[], leap: boolean): boolean {
  const hours = new Array<number>(12).fill(0);
  for (const { month } of rows) hours[month - 1] = (hours[month - 1] as number) + 1;
  return hours.every((count, m) => count >= 0.9 * 24 * daysInMonth(m + 1, leap));
}

function remarkRepeat(row: HourRow, first: HourRow, name: string, log: RemarkLog): void {
  log.add({
    severity: 'drop',
    code: 'hour-repeated',
    line: row.line,
    found: `Line ${row.line} repeats ${name}, already given in line ${first.line}.`,
    wanted: 'Each hour should occur once.',
    done: 'The first was kept.',
  });
}

function remarkDisorder(row: HourRow, name: string, before: string, log: RemarkLog): void {
  log.add({
    severity: 'warn',
    code: 'out-of-order',
    line: row.line,
    found: `Line ${row.line} is ${name}, after ${before}.`,
    wanted: 'Hours should run from January to December.',
    done: 'The hours were put in order.',
  });
}

function remarkGaps(
  table: readonly (HourRow | undefined)[],
  known: ReadonlySet<number>,
  first: number,
  last: number,
  leap: boolean,
  log: RemarkLog,
): void {
  for (let at = Math.max(first, 0); at < last; at++) {
    if (table[at] !== undefined || known.has(at)) continue;
    let end = at;
    while (table[end + 1] === undefined && !known.has(end + 1)) end++;
    const hours = end - at + 1;
    const found =
      hours === 1
        ? `${nameOfHour(at, leap)} is missing.`
        : `${hours} hours are missing, ${nameOfHour(at, leap)} to ${nameOfHour(end, leap)}.`;
    log.add({
      severity: 'warn',
      code: 'hour-missing',
      line: (table[at - 1] as HourRow | undefined)?.line ?? 1,
      found,
      wanted: 'Every hour should be there.',
      done: hours === 1 ? 'The sums do without it.' : 'The sums do without them.',
    });
    at = end;
  }
}
