import type { Working } from '@eaveline/plan';
import { figure } from '../words/figure.ts';

/** The value of a working as it is lettered, with its unit. */
export function valueWords({ value, unit, decimals }: Working): string {
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

/** A working as plain text, indented by depth, for a letter or a note. */
export function copyText(working: Working, depth = 0): string {
  const indent = '  '.repeat(depth);
  const range = rangeWords(working);
  const lines = [`${indent}${working.name}: ${valueWords(working)}${range === undefined ? '' : ` (${range})`}`];
  if (working.formula !== undefined) lines.push(`${indent}  ${working.formula}`);
  if (working.note !== undefined) lines.push(`${indent}  ${working.note}`);
  lines.push(`${indent}  Source: ${working.source}`);
  return [...lines, ...(working.inputs ?? []).map((input) => copyText(input, depth + 1))].join('\n');
}
