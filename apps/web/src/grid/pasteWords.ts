import { counted, listed, sentence } from '../words/count.ts';
import type { PastePlan } from './paste.ts';

/** `Two rows lie past the last row and are not taken.`; undefined where all of it has a place. */
export function beyondWords({ rows, columns }: PastePlan['beyond']): string | undefined {
  const past = [
    ...(rows === 0 ? [] : [`${counted(rows, 'row')} past the last row`]),
    ...(columns === 0 ? [] : [`${counted(columns, 'column')} past the last column`]),
  ];
  if (past.length === 0) return undefined;
  return `${sentence(listed(past))} of this table: not taken.`;
}

/** `pasted 12 cells into circuits`, as one step back names it. */
export function pastedWords(count: number, label: string): string {
  return `pasted ${count} ${count === 1 ? 'cell' : 'cells'} into ${label}`;
}
