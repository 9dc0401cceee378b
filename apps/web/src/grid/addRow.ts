import type { Change } from '@eaveline/plan';
import { valueAt, withValueAt } from '../job/path.ts';
import { listed } from '../words/count.ts';
import { type Column, type GridRow, mayBeEmpty } from './column.ts';

/** How a table gets another row. */
export interface AddRow {
  /** `Add a plane`. */
  readonly words: string;
  /** The row with an id of its own; nothing of it is in the job yet. */
  readonly row: () => GridRow;
}

/**
 * A row that is being filled in. It is in the job when it lacks nothing: until then no measure is made up for it,
 * and nothing of the job hangs on it.
 */
export interface Draft {
  readonly row: GridRow;
  readonly changes: readonly Change[];
}

/** The job as it would be with a draft in it; it may not be sound. */
export function withDraft(job: unknown, draft: Draft | undefined): unknown {
  if (draft === undefined) return job;
  return draft.changes.reduce((document, { path, value }) => withValueAt(document, path, value), job);
}

/** Titles of the columns a draft still lacks. */
export function lackingIn(columns: readonly Column[], rowId: string, document: unknown): string[] {
  return columns.flatMap((column) =>
    column.kind !== 'figure' && !mayBeEmpty(column) && valueAt(document, column.path(rowId)) === undefined
      ? [column.title]
      : [],
  );
}

/** `Not in the job yet: faces, pitch and eave are still to be typed.` */
export function draftWords(lacks: readonly string[]): string {
  return `Not in the job yet: ${listed(lacks)} ${lacks.length === 1 ? 'is' : 'are'} still to be typed.`;
}
