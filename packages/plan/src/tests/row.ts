import type { Limit } from '../rules/pack.ts';
import type { Working } from '../working.ts';
import type { TestRow } from './types.ts';

/** A band round a prediction, never below nothing: a share of it, or a fixed width where that is wider. */
export function band(value: number, share: number, atLeast = 0): readonly [number, number] {
  const half = Math.max(Math.abs(value) * share, atLeast);
  return [Math.max(0, value - half), value + half];
}

/** A prediction with its band. */
export function predicted(
  working: Working,
  unit: string,
  [low, high]: readonly [number, number],
): NonNullable<TestRow['predicted']> {
  return { value: Number(working.value), unit, low, high, working };
}

/** A lawful limit as a pack holds it. */
export function limitOf(
  limit: Limit,
  unit: string,
  sense: 'at most' | 'at least',
  value: number = limit.value,
): NonNullable<TestRow['limit']> {
  return { value, unit, sense, clause: limit.clause, seen: limit.seen };
}

/** A row before it is put in its place. */
export type RowDraft = Omit<TestRow, 'order' | 'group' | 'sheet' | 'reading'>;

/** Rows of one group, in the order they are done. */
export function group(name: TestRow['group'], rows: readonly RowDraft[]): TestRow[] {
  return rows.map((row, k) => ({ ...row, group: name, sheet: name, order: k + 1 }));
}
