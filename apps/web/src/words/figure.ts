import { decimalsApart } from '@eaveline/plan';

/** Narrow space that stands between thousands and before nothing else. */
const THIN = '\u202f';
const MINUS = '\u2212';

/** Decimals that show a value to three figures, none for a whole number; never more than `most`. */
export function decimalsFor(value: number, figures = 3, most = 4): number {
  if (Number.isInteger(value) || !Number.isFinite(value)) return 0;
  const whole = Math.floor(Math.log10(Math.abs(value))) + 1;
  return Math.min(Math.max(figures - whole, 0), most);
}

/**
 * A number as a drawing letters it: true minus, thin space in thousands from four figures, no rolling zeros added.
 *
 * @param decimals  where left out, as many as make three figures.
 */
export function figure(value: number, decimals = decimalsFor(value)): string {
  if (!Number.isFinite(value)) throw new Error(`${value} is no figure of a plan`);
  const text = Math.abs(value).toFixed(decimals);
  const [whole = '0', rest] = text.split('.');
  const grouped = whole.length > 3 ? whole.replace(/\B(?=(\d{3})+$)/g, THIN) : whole;
  const sign = value < 0 && Number(text) !== 0 ? MINUS : '';
  return `${sign}${grouped}${rest === undefined ? '' : `.${rest}`}`;
}

/** `5.32 V`; a degree sign of an angle stands without a space. */
export function withUnit(value: number, unit: string, decimals?: number): string {
  const digits = decimals === undefined ? figure(value) : figure(value, decimals);
  if (unit === '') return digits;
  return unit === '°' ? `${digits}°` : `${digits}\u00a0${unit}`;
}

/** Share of one as a percentage, `41 %`. */
export function percent(share: number, decimals = 0): string {
  return `${figure(share * 100, decimals)}\u00a0%`;
}

/**
 * A value and its limit in as many figures as tell them apart: limits are judged unrounded,
 * so a 2.00 that fails a 2.00 shows what made it fail.
 */
export function apart(value: number, limit: number, least = Math.max(decimalsFor(value), decimalsFor(limit))) {
  const decimals = decimalsApart(value, limit, least);
  return { value: figure(value, decimals), limit: figure(limit, decimals), decimals };
}
