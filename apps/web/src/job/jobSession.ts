import type { Job } from '@eaveline/job';
import type { Change } from '@eaveline/plan';
import type { Reason } from '@eaveline/sync';
import { type Edit, editsBetween, withAt } from '@eaveline/sync/edits';
import { type JobStore, StoreNewer } from '@eaveline/sync/store';
import { meaningOf } from '../history/meaning.ts';
import type { WeatherRead } from '../plan/message.ts';
import type { PlanDesk } from '../plan/planDesk.ts';
import { changeJob, refusalWords } from './changeJob.ts';
import type { Documents } from './documents.ts';
import { type HistoryStep, historySteps } from './history.ts';
import { makeJobKeeper } from './jobKeeper.ts';
import type { JobServer } from './jobServer.ts';
import { type Apart, type Keeping, wordsOf } from './keeping.ts';
import type { PageChannel } from './pageChannel.ts';
import { parsed, stopLines } from './parsed.ts';
import { makePlanning, NOT_PLANNED, type Planned } from './planning.ts';
import { recordsOfBoth } from './records.ts';
import { makeServerMeeting, type ServerAnswer } from './serverMeeting.ts';
import { makeStepNames } from './stepNames.ts';

/** A job on the desk. */
export interface OpenJob extends Planned {
  readonly kind: 'open';
  readonly job: Job;
  readonly keeping: Keeping;
  /** What one step back would take back, what one forth would do again. */
  readonly undo: string | undefined;
  readonly redo: string | undefined;
  /** The moment looked at, where it is not now. Nothing can be changed there. */
  readonly past: HistoryStep | undefined;
  /** What a person has to know of this job's history or keeping. */
  readonly notices: readonly string[];
  readonly weather: WeatherRead | undefined;
}

export type SessionState =
  | { readonly kind: 'opening' }
  | { readonly kind: 'missing' }
  /** It stays as it is; `raw` is there to be saved. */
  | { readonly kind: 'unreadable'; readonly words: readonly string[]; readonly raw: unknown }
  | { readonly kind: 'away'; readonly words: string }
  | OpenJob;

export interface SessionParts {
  readonly server: JobServer;
  readonly store: JobStore;
  readonly documents: () => Promise<Documents>;
  readonly channel: PageChannel;
  readonly desk: PlanDesk;
  readonly here: () => { readonly who: string; readonly device: string };
  readonly now: () => Date;
  /** Calls back after so many milliseconds; gives a way to call it off. */
  readonly later: (call: () => void, ms: number) => () => void;
}

/** One job on the desk: its document, its plan, and where its edits are. The screen only listens. */
export interface JobSession {
  state(): SessionState;
  subscribe(listener: () => void): () => void;
  open(): Promise<void>;
  /** Takes changes, or says in words why not. `words` name them for taking back. */
  edit(changes: readonly Change[], words: string): string | undefined;
  /** One step back or forth by meaning; what became of it, in words. */
  undo(): string;
  redo(): string;
  /** The history, newest first; undefined until it is open. */
  history(): readonly HistoryStep[] | undefined;
  editsOf(step: HistoryStep): readonly Edit[];
  /** Lays the job as it was after a step on the desk, to be looked at; undefined: the job as it is. */
  look(step: HistoryStep | undefined): void;
  /** Makes the job again as it was after a step. Records stay. Why not, in words. */
  goBackTo(step: HistoryStep): string | undefined;
  /** Sends what waits, now; and tries again to keep what the device refused. */
  saveNow(): Promise<void>;
  /** Settles when every edit so far is on the device, or was refused. */
  settled(): Promise<void>;
  keepMine(): Promise<void>;
  takeTheirs(): Promise<void>;
  readWeather(name: string, bytes: Uint8Array): Promise<void>;
  dropWeather(): Promise<void>;
  /** Ends long work at once; the figures stay as far as they had come. */
  stopWork(): void;
  workOutAgain(): Promise<void>;
  close(): void;
}

/** So long the history waits for the first figures; a long plan goes on beside it. */
const FIRST_PLAN_MS = 1500;

const NOW_BUSY = 'This is the job as it was. Go back to now to change it.';

/**
 * Opens a job and keeps it.
 *
 * The document on this device comes first: it is on the screen before its history is open, and before the server is
 * asked. An edit is on the screen at once, then on the device, then on the server.
 */
export function makeJobSession(id: string, parts: SessionParts): JobSession {
  const { server, store, documents, channel, desk, here, now, later } = parts;
  let state: SessionState = { kind: 'opening' };
  let keeping: Keeping = {
    device: { kind: 'keeping' },
    server: { kind: 'asking' },
    apart: undefined,
  };
  /** The job as it is; what is on the screen may be a moment of its past. */
  let newest: Job | undefined;
  let theirs: Job | undefined;
  const stepName = makeStepNames(now);
  const listeners = new Set<() => void>();

  function become(next: SessionState) {
    state = next;
    for (const listener of listeners) listener();
  }
  function amend(more: Partial<OpenJob>) {
    if (state.kind === 'open') become({ ...state, ...more });
  }
  function keep(more: Partial<Keeping>) {
    keeping = { ...keeping, ...more };
    amend({ keeping });
  }

  const workOut = makePlanning({
    ...{ desk, now, later },
    job: () => (state.kind === 'open' ? state.job : undefined),
    onPlanned: amend,
  });

  const keeper = makeJobKeeper(id, {
    ...{ store, documents, channel, now, later },
    onDevice: (device) => keep({ device }),
    onNews(document, other) {
      const { job } = parsed(document);
      if (job !== undefined) {
        if (keeping.apart?.onServer === false) keep({ apart: undefined });
        return stand(job);
      }
      theirs = parsed(other).job;
      apart({ words: 'Another page changed this job, and the two do not go together.', onServer: false });
    },
    onNotice: (words) => {
      if (state.kind === 'open') amend({ notices: [...state.notices, words] });
    },
  });

  const meeting = makeServerMeeting(id, {
    ...{ keeper, server, documents, now, later },
    onServer(state) {
      // both came together after all, as where another page brought what this one lacked: nothing is left to pick
      const moot = state.kind === 'agreed' && keeping.apart?.onServer === true;
      if (moot) theirs = undefined;
      keep({ server: state, ...(moot ? { apart: undefined } : {}) });
    },
    onTaken: stand,
    onApart(words, other) {
      theirs = other;
      apart({ words, onServer: true });
    },
  });

  function apart(what: Apart) {
    keep({ apart: what });
  }

  function stepsHere() {
    const document = keeper.document();
    if (document === undefined) return { undo: undefined, redo: undefined };
    const { back, forth } = document.stepsOf(here().device);
    const named = (step: string | undefined) =>
      step === undefined ? undefined : document.moments().findLast(({ reason }) => reason.step === step)?.reason.what;
    return { undo: named(back.at(-1)), redo: named(forth.at(-1)) };
  }

  /** The job stands otherwise now: on the screen, unless a moment of the past is being looked at. */
  function stand(job: Job) {
    newest = job;
    if (state.kind !== 'open') return;
    if (state.past !== undefined) return amend(stepsHere());
    amend({ job, ...stepsHere() });
    void workOut();
  }

  function lay(job: Job): Promise<void> {
    newest = job;
    const bare = { undo: undefined, redo: undefined, past: undefined, weather: undefined, notices: [] };
    become({ kind: 'open', job, keeping, ...NOT_PLANNED, ...bare });
    return workOut();
  }

  async function openHistory(): Promise<void> {
    const document = await keeper.ready();
    const opened = parsed(document.job());
    if (opened.job === undefined) {
      // edits of two devices that do not read together: the job last kept stays on the screen
      apart({ words: 'Edits made apart do not go together.', onServer: false });
    } else if (newest !== undefined && editsBetween(newest, opened.job).length > 0) stand(opened.job);
    amend(stepsHere());
  }

  /** A document as a job of this address; where it is none that is on the screen. */
  function readHere(document: unknown): Job | undefined {
    const read = parsed(document);
    if (read.job?.id === id) return read.job;
    const words = read.job === undefined ? stopLines(read) : [`It is kept as ${id} and calls itself ${read.job.id}.`];
    become({ kind: 'unreadable', words, raw: document });
    return undefined;
  }

  /** The first figures do not wait for the history: opening it takes the page's own thread as long as they take. */
  async function afterFirstPlan(planned: Promise<void>): Promise<void> {
    await Promise.race([planned, new Promise<void>((goOn) => void later(goOn, FIRST_PLAN_MS))]);
  }

  async function openKept(document: unknown, answer?: ServerAnswer): Promise<void> {
    const job = readHere(document);
    if (job === undefined) return;
    await afterFirstPlan(lay(job));
    await openHistory().catch(historyShut);
    await meeting.meet(answer);
  }

  /** One of two states is picked; what is merged already becomes it. */
  async function pick(what: string, picked: (mine: Job, other: Job | undefined) => Job): Promise<void> {
    const asked = keeping.apart;
    if (asked === undefined || newest === undefined) return;
    const document = await keeper.ready().catch(historyShut);
    if (document === undefined) return;
    const job = picked(newest, theirs);
    theirs = undefined;
    keep({ apart: undefined });
    const edits = editsBetween(document.job(), job);
    if (edits.length > 0) commit(job, edits, { what, step: stepName(undefined), kind: 'edit' });
    await (asked.onServer ? meeting.insist() : meeting.sendNow());
  }

  /** Puts a job in the place of the newest, by what differs. */
  function commit(job: Job, edits: readonly Edit[], reason: Omit<Reason, 'who' | 'device'>) {
    keeper.commit(job, edits, { ...here(), ...reason });
    stand(job);
    if (keeping.apart !== undefined) return;
    if (keeping.server.kind === 'agreed') keep({ server: { kind: 'sending' } });
    meeting.sendSoon();
  }

  function walk(kind: 'undo' | 'redo'): string {
    const document = keeper.document();
    if (state.kind !== 'open' || newest === undefined) return 'The job is not open.';
    if (state.past !== undefined) return NOW_BUSY;
    if (document === undefined) return 'The history is still being opened.';
    const { back, forth } = document.stepsOf(here().device);
    const step = (kind === 'undo' ? back : forth).at(-1);
    if (step === undefined) return kind === 'undo' ? 'Nothing to take back.' : 'Nothing to do again.';
    const what = document.moments().findLast(({ reason }) => reason.step === step)?.reason.what ?? '';
    const { edits, left } = document.editsOfStep(step, kind);
    const after = parsed(withEdits(newest, edits));
    if (after.job === undefined) {
      const [stop] = after.stops;
      return `“${what}” stays: other things hang on it now. ${stop === undefined ? '' : refusalWords(stop)}`;
    }
    const done = kind === 'undo' ? 'Taken back' : 'Done again';
    commit(after.job, edits, { what: `${done}: ${what}`, step: stepName(undefined), kind, of: step });
    const stays = left.length === 0 ? '' : ` ${left.length} of its places changed since, and stay.`;
    return `${done}: ${what}.${stays}`;
  }

  return {
    state: () => state,
    subscribe(listener) {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },

    async open() {
      // asked while the device looks for it: whichever is there first is on the screen
      const answer = server.get(id);
      answer.catch(() => {}); // whoever needs it hears of it
      const here = await keeper.read().catch((error: unknown) => error as Error);
      if (here instanceof StoreNewer) {
        return become({
          kind: 'unreadable',
          words: [here.message, 'Reload this page to take the newer one.'],
          raw: undefined,
        });
      }
      if (here instanceof Error) keep({ device: { kind: 'refused', words: wordsOf(here) } });
      else if (here !== undefined) return openKept(here.job, answer);
      try {
        const served = await answer;
        if (served === undefined) return become({ kind: 'missing' });
        const read = readHere(served.document);
        if (read === undefined) return;
        const taken = keeper.takeOn(read, served.revision);
        const planned = lay(read); // it stands on the screen while the device takes it
        const there = await taken;
        // another page was quicker, or the device answers again: what it holds comes first
        if (there.job !== read) return openKept(there.job);
        await afterFirstPlan(planned);
        await openHistory().catch(historyShut);
        // both agree on how it began; what was typed while the history was opening is not on the server yet
        const same = newest === read || (newest !== undefined && editsBetween(read, newest).length === 0);
        keep({ server: same ? { kind: 'agreed', at: now() } : { kind: 'sending' } });
        if (keeper.document() !== undefined || !same) meeting.sendSoon();
      } catch (error) {
        if (state.kind !== 'open') become({ kind: 'away', words: wordsOf(error) });
        else throw error;
      }
    },

    edit(changes, words) {
      if (state.kind !== 'open' || newest === undefined) return 'The job is not open.';
      if (state.past !== undefined) return NOW_BUSY;
      const changed = changeJob(newest, changes);
      if ('refusal' in changed) return refusalWords(changed.refusal);
      const edits = editsBetween(newest, changed.job);
      if (edits.length === 0) return undefined;
      const kind = changes.some(({ path }) => path[0] === 'records') ? 'record' : 'edit';
      const where = changes.map(({ path }) => path.join('.'));
      // what somebody else does is a step of its own, however soon
      const step = stepName([here().who, words, ...where].join('\n'));
      commit(changed.job, edits, { what: meaningOf(changed.job, words, edits), step, kind });
      return undefined;
    },

    undo: () => walk('undo'),
    redo: () => walk('redo'),

    history() {
      const document = keeper.document();
      return document === undefined ? undefined : historySteps(document);
    },
    editsOf(step) {
      const document = keeper.document();
      return document === undefined ? [] : step.moments.flatMap((moment) => document.editsOf(moment));
    },

    look(step) {
      const document = keeper.document();
      if (state.kind !== 'open' || newest === undefined || document === undefined) return;
      const job = step === undefined ? newest : parsed(document.jobAt(step.heads)).job;
      if (job === undefined)
        return amend({ notices: [...state.notices, 'The job at that moment does not open here.'] });
      amend({ job, past: step });
      void workOut();
    },

    goBackTo(step) {
      const document = keeper.document();
      if (state.kind !== 'open' || newest === undefined || document === undefined) return 'The history is not open.';
      const then = document.jobAt(step.heads) as Job;
      const back = parsed({ ...then, records: newest.records });
      if (back.job === undefined) {
        const [stop] = back.stops;
        return `The job of that moment does not go with the records made since. ${stop === undefined ? '' : refusalWords(stop)}`;
      }
      const edits = editsBetween(newest, back.job);
      amend({ past: undefined });
      if (edits.length === 0) stand(newest);
      else
        commit(back.job, edits, { what: `Gone back to: ${step.what}`, step: stepName(undefined), kind: 'gone back' });
      return undefined;
    },

    async saveNow() {
      keeper.tryAgain();
      if (state.kind === 'open' && keeping.apart === undefined && keeping.server.kind !== 'agreed')
        await meeting.sendNow();
    },
    settled: () => keeper.settled(),

    async keepMine() {
      await pick('Kept this device’s state', (mine, other) => withRecords(mine, other?.records, mine.records));
    },
    async takeTheirs() {
      const what = keeping.apart;
      if (what !== undefined && theirs === undefined)
        return apart({ ...what, words: `${what.words} It does not open here, so it cannot be taken.` });
      await pick('Took the other state', (mine, other) => withRecords(other ?? mine, mine.records, other?.records));
    },

    async readWeather(name, bytes) {
      const weather = await desk.readWeather(id, name, bytes);
      amend({ weather });
      await workOut();
    },
    async dropWeather() {
      await desk.dropWeather(id);
      amend({ weather: undefined });
      await workOut();
    },

    stopWork: () => desk.stop(),
    workOutAgain: workOut,

    close() {
      meeting.close();
      keeper.close();
      listeners.clear();
    },
  };

  /** Without its history a job is still kept, whole, edit by edit; only steps back wait for the next opening. */
  function historyShut(error: unknown): void {
    if (state.kind === 'open') {
      amend({
        notices: [...state.notices, `The history could not be opened: ${wordsOf(error)} Edits are kept all the same.`],
      });
    }
  }
}

/** A picked state with the records of both: a record is never put out of a job by picking another state of it. */
function withRecords(job: Job, under: Job['records'] | undefined, over: Job['records'] | undefined): Job {
  if (under === undefined || over === undefined) return job;
  // records that hang on things the picked state has not stay in the history alone
  return parsed({ ...job, records: recordsOfBoth(under, over) }).job ?? job;
}

function withEdits(job: Job, edits: readonly Edit[]): unknown {
  return edits.reduce<unknown>((document, { path, after }) => withAt(document, path, after), job);
}
