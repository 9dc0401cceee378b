import type { Job } from '@eaveline/job';
import { editsBetween } from '@eaveline/sync/edits';
import type { JobStore } from '@eaveline/sync/store';
import { type JobServer, NEVER_SAVED } from '../job/jobServer.ts';
import { readCopy, sameState } from './copies.ts';
import { servedOf } from './servedOf.ts';

export interface KeepParts {
  readonly store: JobStore;
  readonly server: JobServer;
  readonly now: () => Date;
}

/** What became of an act, in words; `done` is false where nothing was changed. */
export interface Outcome {
  readonly done: boolean;
  readonly words: string;
}

export const wordsOf = (error: unknown) => (error instanceof Error ? error.message : String(error));

/**
 * Keeps a job that is new here: first on this device, and only then, as well as it goes, on the server.
 *
 * The server's own job of that id is never written over; the words say where the job now is.
 */
export async function keepNewJob(job: Job, parts: KeepParts): Promise<Outcome> {
  const { store, now } = parts;
  try {
    const mine = { id: job.id, job, keptAt: now().toISOString() };
    const already = { done: false, words: `${job.id} is kept on this device already. Nothing was written over it.` };
    if ((await store.kept(job.id)) !== undefined) return already;
    const there = await store.addNew(mine);
    if (there.keptAt !== mine.keptAt) return already;
  } catch (error) {
    return { done: false, words: `${job.name} could not be kept on this device: ${wordsOf(error)} Save its file.` };
  }
  const { words } = await sendToServer(job, parts);
  return { done: true, words: `${job.name} is kept on this device. ${words}` };
}

/** Gives the server a job it has not. */
export async function sendToServer(job: Job, { server }: Pick<KeepParts, 'server'>): Promise<Outcome> {
  try {
    const there = await servedOf(server, job.id);
    if (there !== undefined) {
      const theirs = readCopy(job.id, there.served.document).job;
      if (theirs !== undefined && sameState(theirs, job)) return { done: true, words: 'The server has it.' };
      return { done: false, words: 'The server has another job of this id, and keeps it.' };
    }
    const saved = await server.put(job.id, job, NEVER_SAVED);
    if (saved.kind === 'saved') return { done: true, words: 'The server has it too.' };
    if (saved.kind === 'refused') return { done: false, words: `The server did not take it: ${saved.words}` };
    return { done: false, words: 'Somebody gave the server this job meanwhile.' };
  } catch (error) {
    return { done: false, words: `${wordsOf(error)} It goes there when it is opened while the server answers.` };
  }
}

/** Keeps a job of the server on this device too, so that it opens without the server. */
export async function keepOnDevice(job: Job, { store, now }: Pick<KeepParts, 'store' | 'now'>): Promise<Outcome> {
  try {
    await store.addNew({ id: job.id, job, keptAt: now().toISOString() });
    return { done: true, words: `${job.name} is kept on this device too.` };
  } catch (error) {
    return { done: false, words: `${job.name} could not be kept on this device: ${wordsOf(error)}` };
  }
}

/**
 * Takes a job off this device, only where the server is seen to hold the same state of it at this moment.
 */
export async function removeFromDevice(
  id: string,
  { store, server }: Pick<KeepParts, 'store' | 'server'>,
): Promise<Outcome> {
  const stays = (words: string): Outcome => ({ done: false, words: `${words} It stays on this device.` });
  try {
    const kept = await store.kept(id);
    if (kept === undefined) return { done: true, words: 'It is not on this device.' };
    if (kept.loose !== undefined) return stays('Edits of it wait for its history. Open it once, then remove it.');
    const mine = readCopy(id, kept.job).job;
    const there = await servedOf(server, id);
    if (there === undefined) return stays('The server does not have it.');
    const theirs = readCopy(id, there.served.document).job;
    if (mine === undefined || theirs === undefined || !sameState(mine, theirs))
      return stays('The server holds another state of it. Open it, let the two come together, then remove it.');
    // what was kept while the server was asked is in nobody else's hands
    if (
      !(await store.remove(
        id,
        (still) => still?.keptAt === kept.keptAt && editsBetween(still.job, kept.job).length === 0,
      ))
    )
      return stays('It was changed at this moment.');
    return { done: true, words: `${mine.name} is removed from this device. The server has it.` };
  } catch (error) {
    return stays(wordsOf(error));
  }
}
