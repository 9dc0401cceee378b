import type { Job } from '@eaveline/job';
import type { Change } from '@eaveline/plan';
import { changeJob, refusalWords } from '../job/changeJob.ts';
import { readCopy, sameState } from './copies.ts';
import { type KeepParts, type Outcome, wordsOf } from './keepJob.ts';
import { servedOf } from './servedOf.ts';

/**
 * Changes a job that is not open: archives it, takes it back.
 *
 * The one place where the Book changes a job that may have a history. It writes the state that is kept and then, as
 * well as it goes, the server's; a job opened on a desk goes by its session.
 *
 * @param said  what is now true where it is done, `Kestrel Rise is archived.`
 */
export async function changeKeptJob(
  job: Job,
  changes: readonly Change[],
  said: string,
  parts: KeepParts,
): Promise<Outcome> {
  const changed = changeJob(job, changes);
  if ('refusal' in changed) return { done: false, words: refusalWords(changed.refusal) };
  return putState(job, changed.job, said, parts);
}

/** Puts the state a file brings in the place of the one that is kept. */
export async function takeNewerState(here: Job, file: Job, said: string, parts: KeepParts): Promise<Outcome> {
  return putState(here, file, said, parts);
}

async function putState(before: Job, after: Job, said: string, parts: KeepParts): Promise<Outcome> {
  const { store, server, now } = parts;
  const { id } = after;
  try {
    const kept = await store.kept(id);
    await store.add({ ...kept, id, job: after, keptAt: now().toISOString() }, []);
  } catch (error) {
    return { done: false, words: `Nothing was changed: ${wordsOf(error)}` };
  }
  try {
    const there = await servedOf(server, id);
    const theirs = there && readCopy(id, there.served.document).job;
    if (there === undefined) return { done: true, words: `${said} It is on this device only.` };
    if (theirs === undefined || !sameState(theirs, before))
      return {
        done: true,
        words: `${said} On this device; the server holds another state. Open it to bring them together.`,
      };
    const saved = await server.put(id, after, there.served.revision);
    if (saved.kind === 'saved') return { done: true, words: said };
    const why = saved.kind === 'refused' ? saved.words : 'somebody else saved it meanwhile.';
    return { done: true, words: `${said} On this device; the server did not take it: ${why}` };
  } catch (error) {
    return { done: true, words: `${said} On this device; ${lower(wordsOf(error))} It goes there when it is opened.` };
  }
}

const lower = (words: string) => words.charAt(0).toLowerCase() + words.slice(1);
