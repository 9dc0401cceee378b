import { decimalsApart } from '../decimalsApart.ts';
import { isWithin } from './rule.ts';

/** A figure and its limit as they are written. */
export interface Shown {
  readonly value: string;
  readonly limit: string;
}

/**
 * Writes a figure and its limit with as many decimals as asked, and with more where a figure that fails would read
 * the same as its limit: 2.004 of 2 with two decimals is `2.004` of `2.000`.
 */
export function showWithin(value: number, limit: number, sense: 'at most' | 'at least', decimals: number): Shown {
  const fails = !isWithin(value, limit, sense);
  const places = fails ? decimalsApart(value, limit, decimals) : decimals;
  return { value: signed(value, places), limit: signed(limit, places) };
}

/** A number with a true minus sign, and no minus before a zero. */
export function signed(value: number, decimals: number): string {
  const text = Math.abs(value).toFixed(decimals);
  return value < 0 && Number(text) !== 0 ? `−${text}` : text;
}
