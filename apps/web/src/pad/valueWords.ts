import type { Working } from '@eaveline/plan';
import { figure } from '../words/figure.ts';

/** Small figures are lettered in a thousandth of their unit: 0.00356 Ω/m would lose all but two of its figures. */
const THOUSANDTH: Readonly<Record<string, string>> = { 'Ω/m': 'mΩ/m' };

/** The value of a working as it is lettered, with its unit. */
export function valueWords({ value, unit, decimals }: Pick<Working, 'value' | 'unit' | 'decimals'>): string {
  const small = THOUSANDTH[unit];
  if (small !== undefined && typeof value === 'number' && decimals === undefined && Math.abs(value) < 0.1)
    return valueWords({ value: value * 1000, unit: small });
  const digits = typeof value === 'string' ? value : decimals === undefined ? figure(value) : figure(value, decimals);
  if (unit === '') return digits;
  return unit === '°' ? `${digits}°` : `${digits}\u00a0${unit}`;
}

/** `14.6 to 17.0 MWh`, where the figure is uncertain. */
export function rangeWords({ range, unit, decimals }: Working): string | undefined {
  if (range === undefined) return undefined;
  const said = (value: number) => (decimals === undefined ? figure(value) : figure(value, decimals));
  return `${said(range[0])} to ${said(range[1])}${unit === '' ? '' : `\u00a0${unit}`}`;
}
