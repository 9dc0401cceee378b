import type { Reason, StoredHistory } from '@eaveline/sync';
import { editsBetween, valueAt, withAt } from '@eaveline/sync/edits';
import type { KeptJob } from '@eaveline/sync/store';
import { countOfRevision } from './jobServer.ts';

export const BEGUN: Reason = { who: '', what: 'Begun', device: '', step: 'begun', kind: 'begun' };
export const BEGUN_AGAIN = 'Begun again: the history before did not read';
export const READ: Reason = { ...BEGUN, what: 'Filled in by reading it', step: 'read', kind: 'taken in' };

export const nothingIn = ({ snapshot, changes }: StoredHistory) => snapshot === undefined && changes.length === 0;

/** How a history begins: of a job the server had for longer, only with its newest state. */
export function begunAs({ server }: KeptJob): Reason {
  const saves = countOfRevision(server?.revision);
  return saves > 1 ? { ...BEGUN, what: `Taken on from the firm’s server, as its save ${saves} has it` } : BEGUN;
}

/** The job as it was before its loose edits: what a history begins with, so that these are steps of it. */
export function withoutLoose({ job, loose = [] }: KeptJob): unknown {
  const edits = loose.flatMap((each) => each.edits);
  return edits.reduceRight<unknown>((now, { path, before, after }) => {
    const stands = editsBetween(valueAt(now, path), after).length === 0;
    return stands ? withAt(now, path, before) : now;
  }, job);
}
