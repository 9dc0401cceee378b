const DAYS = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];
const NAMES = [
  'January',
  'February',
  'March',
  'April',
  'May',
  'June',
  'July',
  'August',
  'September',
  'October',
  'November',
  'December',
];

export const HOUR_MS = 3_600_000;

/** Days of a month of a typical year, month 1 to 12. */
export function daysInMonth(month: number, leap: boolean): number {
  return (DAYS[month - 1] as number) + (leap && month === 2 ? 1 : 0);
}

/** Whether a year is one that weather was taken in, and that the sun can be reckoned for. */
export function isYear(year: number): boolean {
  return Number.isInteger(year) && year > 1900 && year <= 2200;
}

/** Whether month and day are real; 29 February counts as real. */
export function isDate(month: number, day: number): boolean {
  const whole = Number.isInteger(month) && Number.isInteger(day);
  return whole && month >= 1 && month <= 12 && day >= 1 && day <= daysInMonth(month, true);
}

/** Place of an hour (1 to 24, hour-ending) in its year, counted from 0. */
export function hourOfYear(month: number, day: number, hour: number, leap: boolean): number {
  let days = day - 1;
  for (let m = 1; m < month; m++) days += daysInMonth(m, leap);
  return days * 24 + hour - 1;
}

/** `3 January` of an hour counted from 0. */
export function dateOfHour(index: number, leap: boolean): string {
  let day = Math.floor(index / 24);
  for (let month = 1; month <= 12; month++) {
    const days = daysInMonth(month, leap);
    if (day < days) return `${day + 1} ${NAMES[month - 1]}`;
    day -= days;
  }
  throw new Error(`hour ${index} is past the end of the year`);
}

/** `3 January, hour 3` of an hour counted from 0. */
export function nameOfHour(index: number, leap: boolean): string {
  return `${dateOfHour(index, leap)}, hour ${(index % 24) + 1}`;
}
