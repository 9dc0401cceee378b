import { useEffect, useState } from 'react';
import type { Draft } from './addRow.ts';

/** The part of a browser's storage that is used here. */
export type DraftStorage = Pick<Storage, 'getItem' | 'setItem' | 'removeItem'>;

const NOWHERE: DraftStorage = { getItem: () => null, setItem() {}, removeItem() {} };

/** What this tab remembers; a browser that allows none of it, and a page drawn without one, remember nothing. */
function ofThisTab(): DraftStorage {
  try {
    return globalThis.sessionStorage ?? NOWHERE;
  } catch {
    return NOWHERE;
  }
}

/** A row half filled in, as this tab left it; undefined where it left none, or where it does not read. */
export function readDraft(storage: DraftStorage, key: string): Draft | undefined {
  try {
    const text = storage.getItem(key);
    if (text === null) return undefined;
    const { row, changes } = JSON.parse(text) as Draft;
    return typeof row.id === 'string' && Array.isArray(changes) ? { row, changes } : undefined;
  } catch {
    return undefined; // a browser that remembers nothing: the row is there for as long as its sheet is
  }
}

export function writeDraft(storage: DraftStorage, key: string, draft: Draft | undefined): void {
  try {
    if (draft === undefined) storage.removeItem(key);
    else storage.setItem(key, JSON.stringify(draft));
  } catch {
    // as above
  }
}

/**
 * The row that is being filled in, still there when one comes back from another sheet, and after a reload of the tab.
 *
 * @param taken  ids of rows in the job: a draft of one of these has come in by another way.
 */
export function useKeptDraft(key: string, taken: readonly string[]) {
  const [draft, setDraft] = useState<Draft | undefined>(() => readDraft(ofThisTab(), key));
  useEffect(() => writeDraft(ofThisTab(), key, draft), [key, draft]);
  const open = draft === undefined || taken.includes(draft.row.id) ? undefined : draft;
  return [open, setDraft] as const;
}
