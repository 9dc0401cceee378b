import { civilTimeAt, decimalsApart, type Working } from '@eaveline/plan';

/** Between groups of three digits from four figures on; it does not break a line. */
const THIN = '\u202f';
const MONTHS = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'June', 'July', 'Aug', 'Sept', 'Oct', 'Nov', 'Dec'] as const;

export const monthNames: readonly string[] = MONTHS;

/** A figure as a drawing writes it: `16 800`, `−4.0`. Three significant figures where no decimals are asked for. */
export function figure(value: number, decimals = decimalsOf(value)): string {
  const [whole = '', part] = Math.abs(value).toFixed(decimals).split('.');
  const grouped = whole.length < 4 ? whole : whole.replace(/\B(?=(\d{3})+$)/g, THIN);
  const digits = part === undefined ? grouped : `${grouped}.${part}`;
  return value < 0 && /[1-9]/.test(digits) ? `−${digits}` : digits;
}

/** Places after the point that show three figures; whole numbers stay whole. */
function decimalsOf(value: number): number {
  if (value === 0 || Number.isInteger(value)) return 0;
  return Math.min(6, Math.max(0, 2 - Math.floor(Math.log10(Math.abs(value)))));
}

/** A figure with its unit after a space that does not break. */
export function withUnit(value: number, unit: string, decimals?: number): string {
  const shown = decimals === undefined ? figure(value) : figure(value, decimals);
  return unit === '' ? shown : `${shown}\u00a0${unit}`;
}

/** `0.09 to 0.19 Ω`: a range, the unit once. */
export function rangeOf(low: number, high: number, unit: string, decimals?: number): string {
  const places = decimals ?? Math.max(decimalsOf(low), decimalsOf(high));
  return `${figure(low, places)} to ${withUnit(high, unit, places)}`;
}

/** Metres as the whole millimetres of a drawing. */
export function mm(metres: number): string {
  return figure(Math.round(metres * 1000), 0);
}

/**
 * How far off a thing lies from where it is measured from, as whole millimetres; on the other side it says which side
 * that is, for a tape has no minus: `300 left of it`.
 */
export function mmFrom(metres: number, otherSide: string): string {
  return Math.round(metres * 1000) < 0 ? `${mm(-metres)} ${otherSide}` : mm(metres);
}

/** What a working came to. */
export function resultOf(working: Working): string {
  const { value, unit, decimals } = working;
  if (typeof value === 'string') return unit === '' ? value : `${value}\u00a0${unit}`;
  return withUnit(value, unit, decimals);
}

/**
 * A value and its limit in the same places: as many as asked for, and more where what fails would read like its
 * limit, so that it never reads `2.00 of 2.00`.
 */
export function apart(value: number, limit: number, decimals: number, fails: boolean) {
  const places = fails ? decimalsApart(value, limit, decimals) : decimals;
  return { value: figure(value, places), limit: figure(limit, places) };
}

/** A value against its limit, both with the places the larger of them reads well with: `5.42 of 4.60 V`. */
export function against(value: number, limit: number, unit: string, fails: boolean): string {
  const larger = Math.max(Math.abs(value), Math.abs(limit));
  const whole = Number.isInteger(value) && Number.isInteger(limit);
  const places = whole || larger === 0 ? 0 : Math.min(6, Math.max(0, 2 - Math.floor(Math.log10(larger))));
  const shown = apart(value, limit, places, fails);
  return `${shown.value} of ${shown.limit}${unit === '' ? '' : `\u00a0${unit}`}`;
}

/** A share of one as a whole per cent; never 0 or 100 where it is not quite so. */
export function perCent(share: number): string {
  if (share > 0 && share < 0.005) return 'under 1 %';
  if (share < 1 && share > 0.995) return 'over 99 %';
  return `${figure(100 * share, 0)}\u00a0%`;
}

/** `1 module`, `26 modules`. */
export function counted(count: number, one: string, many = `${one}s`): string {
  return `${figure(count, 0)} ${count === 1 ? one : many}`;
}

/** An hour of a day as `06:30`, hours past midnight taken off. */
export function clock(hours: number): string {
  const minutes = Math.round(hours * 60);
  const two = (n: number): string => String(n).padStart(2, '0');
  return `${two(Math.floor(minutes / 60) % 24)}:${two(minutes % 60)}`;
}

/** An instant on the civil clock of a zone: `15 May 2026, 06:10`. */
export function civilTime(iso: string, zone: string): string {
  const { year, month, day, hour, minute } = civilTimeAt(zone, Date.parse(iso));
  return `${day} ${MONTHS[month - 1]} ${year}, ${clock(hour + minute / 60)}`;
}

/** A civil date `2026-05-12` as `12 May 2026`. */
export function civilDay(date: string): string {
  const [year, month, day] = date.split('-').map(Number);
  return `${day} ${MONTHS[(month ?? 1) - 1]} ${year}`;
}

/** First letter large. */
export function capital(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}

/** `one, two and three`. */
export function listed(words: readonly string[]): string {
  return words.length < 2 ? (words[0] ?? '') : `${words.slice(0, -1).join(', ')} and ${words.at(-1)}`;
}
