import type { Job } from '@eaveline/job';
import type { Change } from '@eaveline/plan';
import { editsBetween } from '@eaveline/sync/edits';
import { changeJob, refusalWords } from '../job/changeJob.ts';
import type { Documents } from '../job/documents.ts';
import { makeJobKeeper } from '../job/jobKeeper.ts';
import type { OnDevice, OnServer } from '../job/keeping.ts';
import type { PageChannel } from '../job/pageChannel.ts';
import { parsed } from '../job/parsed.ts';
import { recordsOfBoth } from '../job/records.ts';
import { makeServerMeeting } from '../job/serverMeeting.ts';
import { type KeepParts, type Outcome, wordsOf } from './keepJob.ts';

/** What changing a job takes that is not open: its history, and whoever has it open on another page. */
export interface ChangeParts extends KeepParts {
  readonly documents: () => Promise<Documents>;
  readonly channel: (id: string) => PageChannel;
  readonly later: (call: () => void, ms: number) => () => void;
  readonly here: () => { readonly who: string; readonly device: string };
}

/**
 * Changes a job that is not open, as a step of its history: archives it, takes it back.
 *
 * @param said  what is now true where it is done, `Kestrel Rise is archived.`; the name of the step too.
 */
export function changeKeptJob(
  job: Job,
  changes: readonly Change[],
  said: string,
  parts: ChangeParts,
): Promise<Outcome> {
  return step(job, said, parts, (now) => {
    const changed = changeJob(now, changes);
    return 'refusal' in changed ? refusalWords(changed.refusal) : changed.job;
  });
}

/**
 * Puts the state a file brings in the place of the one that is kept, as a step of its history.
 *
 * Records of both stay: what was seen on site is not undone by a file that does not know of it.
 */
export function takeNewerState(here: Job, file: Job, said: string, parts: ChangeParts): Promise<Outcome> {
  return step(here, said, parts, (now) => {
    const read = parsed({ ...file, records: recordsOfBoth(now.records, file.records) });
    if (read.job !== undefined) return read.job;
    const [stop] = read.stops;
    return stop === undefined ? 'The records of both do not go together.' : refusalWords(stop);
  });
}

/** @param after  the job as it is to be, made of how it stands; words where that cannot be. */
async function step(
  job: Job,
  said: string,
  { store, server, documents, channel, now, later, here }: ChangeParts,
  after: (job: Job) => Job | string,
): Promise<Outcome> {
  const { id } = job;
  let onDevice: OnDevice = { kind: 'keeping' };
  let onServer: OnServer | undefined;
  const notices = new Set<string>();
  const pages = channel(id);
  const keeper = makeJobKeeper(id, {
    ...{ store, documents, channel: pages, now, later },
    onDevice: (state) => {
      onDevice = state;
    },
    onNews: () => {},
    onNotice: (words) => notices.add(words),
  });
  const meeting = makeServerMeeting(id, {
    ...{ keeper, server, documents, now, later },
    onServer: (state) => {
      onServer = state;
    },
    onTaken: () => {},
    onApart: (words) => notices.add(`${words} Open it to pick one.`),
  });
  try {
    if ((await keeper.read()) === undefined) {
      // as the server has it now, so that both agree on what this grows from; with the server away as it was seen
      const served = await server.get(id).catch(() => undefined);
      const theirs = served === undefined ? undefined : parsed(served.document).job;
      await (theirs?.id === id ? keeper.takeOn(theirs, served?.revision) : keeper.takeOn(job, undefined));
    }
    const document = await keeper.ready();
    // both agree on how it stands first: then the server has only this one step to take
    await meeting.meet();
    const stands = parsed(document.job()).job;
    if (stands === undefined)
      return { done: false, words: 'Its history does not read together. Open it to mend that.' };
    const next = after(stands);
    if (typeof next === 'string') return { done: false, words: next };
    const atMs = now().getTime();
    const reason = { ...here(), what: said, step: `book ${atMs.toString(36)} ${id}`, kind: 'edit' } as const;
    keeper.commit(next, editsBetween(stands, next), reason);
    await keeper.settled();
    const kept = onDevice as OnDevice; // it was told while this waited
    if (kept.kind !== 'kept')
      return { done: false, words: `It could not be kept${kept.kind === 'refused' ? `: ${kept.words}` : '.'}` };
    await meeting.sendNow();
    await keeper.settled();
    const sent = onServer as OnServer | undefined;
    const waits =
      sent?.kind === 'waiting' ? `It is on this device. ${sent.words} It goes there when it is opened.` : '';
    return { done: true, words: [said, waits, ...notices].filter((words) => words !== '').join(' ') };
  } catch (error) {
    return { done: false, words: `Nothing was changed: ${wordsOf(error)}` };
  } finally {
    meeting.close();
    keeper.close();
  }
}
