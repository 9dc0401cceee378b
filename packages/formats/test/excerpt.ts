import { readFileSync } from 'node:fs';
import type { Reading } from '../src/index.ts';
import { remarkSentence } from '../src/index.ts';

/** Bytes of an excerpt in `fixtures/weather`. */
export function excerptBytes(name: string): Uint8Array {
  return new Uint8Array(readFileSync(new URL(`../fixtures/weather/${name}`, import.meta.url)));
}

/** The same as text. */
export function excerpt(name: string): string {
  return readFileSync(new URL(`../fixtures/weather/${name}`, import.meta.url), 'utf8');
}

/** What a reading says under one code, as a person reads it; empty when it says nothing. */
export function said(reading: Reading<unknown>, code: string): string {
  return reading.remarks
    .filter((remark) => remark.code === code)
    .map(remarkSentence)
    .join('\n');
}

/** Changes the fields of the data rows of an EPW text (eight head lines), rows counted from 0. */
export function changeRows(epw: string, change: (fields: string[], row: number) => string[] | undefined): string {
  const lines = epw.split('\r\n').filter((line) => line !== '');
  const rows = lines.slice(8).flatMap((line, row) => {
    const fields = change(line.split(','), row);
    return fields === undefined ? [] : [fields.join(',')];
  });
  return [...lines.slice(0, 8), ...rows].join('\r\n');
}
