import { editsBetween } from '@eaveline/sync/edits';
import type { JobStore, StoredChange } from '@eaveline/sync/store';
import type { JobServer } from '../job/jobServer.ts';
import { readCopy } from './copies.ts';
import { type KeepParts, type Outcome, wordsOf } from './keepJob.ts';
import { servedOf } from './servedOf.ts';

const ASIDE = '.laid-aside.';

/** Whether this row of the device is one that was laid aside, and of which job. */
export function laidAsideOf(id: string): { readonly id: string; readonly at: string } | undefined {
  const [of, at, ...more] = id.split(ASIDE);
  return of === undefined || at === undefined || more.length > 0 ? undefined : { id: of, at };
}

/**
 * Lays a job that does not open aside on this device, whole: its document, its edits, its history, and what was laid
 * aside of it before. Only once all of that is kept under a name of its own is the job taken from its old place, and
 * only where it is still as it was seen.
 */
export async function layAside(id: string, { store, now }: Pick<KeepParts, 'store' | 'now'>): Promise<Outcome> {
  try {
    const kept = await store.kept(id);
    if (kept === undefined) return { done: true, words: 'It is not on this device.' };
    if (readCopy(id, kept.job).job !== undefined) return { done: false, words: 'It opens again, and stays as it is.' };
    const at = now().toISOString();
    const name = `${id}${ASIDE}${at}`;
    const there = await store.addNew({ ...kept, id: name });
    if (there.keptAt !== kept.keptAt || editsBetween(there.job, kept.job).length > 0)
      return { done: false, words: 'Another was laid aside at this very moment. Try again.' };
    for (const before of await store.aside(id))
      await putAside(store, name, before.at, [{ hash: '', bytes: before.bytes }]);
    const { snapshot, changes } = await store.history(id);
    // a snapshot stands before the changes made on it: they are laid together by the order of their names
    const pieces = [...(snapshot === undefined ? [] : [{ hash: '', bytes: snapshot }]), ...changes];
    await putAside(store, name, at, pieces);
    const removed = await store.remove(
      id,
      (still) => still?.keptAt === kept.keptAt && editsBetween(still.job, kept.job).length === 0,
    );
    if (!removed) return { done: false, words: 'It changed meanwhile, and stays. Look at it once more.' };
    return { done: true, words: 'What did not open is laid aside on this device, whole. The Book lists it.' };
  } catch (error) {
    return { done: false, words: `It could not be laid aside: ${wordsOf(error)} It is left as it is.` };
  }
}

/** Takes what was laid aside off this device for good. Never a job: only what was laid aside of one. */
export async function removeLaidAside(id: string, { store }: Pick<KeepParts, 'store'>): Promise<Outcome> {
  if (laidAsideOf(id) === undefined) return { done: false, words: 'It was not laid aside, and stays.' };
  try {
    await store.remove(id, () => true);
    return { done: true, words: 'What was laid aside is removed from this device.' };
  } catch (error) {
    return { done: false, words: `It could not be removed: ${wordsOf(error)} It is left as it is.` };
  }
}

async function putAside(store: JobStore, name: string, at: string, pieces: readonly StoredChange[]): Promise<void> {
  if (pieces.length === 0) return;
  await store.begin(name, pieces);
  await store.setAside(name, at, () => true);
}

/** What the server has of a job that does not open here. */
export type ServerCopy = 'asking' | 'opens' | 'does not open' | 'none' | 'away';

export async function serverCopyOf(id: string, server: JobServer): Promise<Exclude<ServerCopy, 'asking'>> {
  try {
    const there = await servedOf(server, id);
    if (there === undefined) return 'none';
    return readCopy(id, there.served.document).job === undefined ? 'does not open' : 'opens';
  } catch {
    return 'away'; // what became of the asking is said where it is shown
  }
}
