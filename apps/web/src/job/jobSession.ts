import { type Job, parseJob, remarkLine } from '@eaveline/job';
import type { Change, Plan } from '@eaveline/plan';
import type { WeatherRead } from '../plan/message.ts';
import type { PlanDesk } from '../plan/planDesk.ts';
import { changeJob, refusalWords } from './changeJob.ts';
import type { JobServer } from './jobServer.ts';
import type { UnsavedStore } from './unsaved.ts';

/** Where the newest edits are. */
export type Keeping =
  | { readonly kind: 'kept' }
  | { readonly kind: 'keeping' }
  /** On this device only; `words` say why. */
  | { readonly kind: 'waiting'; readonly words: string; readonly since: Date }
  /** Somebody else saved another version meanwhile. */
  | { readonly kind: 'two versions' };

/** A job on the desk. */
export interface OpenJob {
  readonly kind: 'open';
  readonly job: Job;
  /** Last plan worked out; undefined until the first is there. */
  readonly plan: Plan | undefined;
  /** True while the plan is of an earlier state of the job or its weather. */
  readonly stale: boolean;
  readonly workedOutAt: Date | undefined;
  /** Why the last plan could not be worked out. */
  readonly notWorkedOut: string | undefined;
  readonly keeping: Keeping;
  /** What one step back would take back. */
  readonly undo: string | undefined;
  readonly weather: WeatherRead | undefined;
}

export type SessionState =
  | { readonly kind: 'opening' }
  | { readonly kind: 'missing' }
  | { readonly kind: 'unreadable'; readonly words: readonly string[] }
  | { readonly kind: 'away'; readonly words: string }
  | OpenJob;

export interface SessionParts {
  readonly server: JobServer;
  readonly unsaved: UnsavedStore;
  readonly desk: PlanDesk;
  readonly now: () => Date;
  /** Calls back after so many milliseconds; gives a way to call it off. */
  readonly later: (call: () => void, ms: number) => () => void;
}

const SAVE_AFTER_MS = 600;
const TRY_AGAIN_AFTER_MS = 10_000;

/** One job on the desk: its document, its plan, and where its edits are. The screen only listens. */
export interface JobSession {
  state(): SessionState;
  subscribe(listener: () => void): () => void;
  open(): Promise<void>;
  /** Takes changes, or says in words why not. `words` name them for taking back. */
  edit(changes: readonly Change[], words: string): string | undefined;
  undo(): void;
  saveNow(): Promise<void>;
  keepMine(): Promise<void>;
  takeTheirs(): Promise<void>;
  readWeather(name: string, bytes: Uint8Array): Promise<void>;
  dropWeather(): Promise<void>;
  close(): void;
}

/**
 * Opens a job and keeps it.
 *
 * An edit is first kept in the browser, then sent; the browser's copy goes when the server has acknowledged it.
 */
export function makeJobSession(id: string, { server, unsaved, desk, now, later }: SessionParts): JobSession {
  let state: SessionState = { kind: 'opening' };
  let revision: string | undefined;
  let back: { readonly job: Job; readonly words: string } | undefined;
  let callOff = () => {};
  let saving = false;
  let planning = false;
  let planAgain = false;
  const listeners = new Set<() => void>();

  function become(next: SessionState) {
    state = next;
    for (const listener of listeners) listener();
  }
  function amend(more: Partial<OpenJob>) {
    if (state.kind === 'open') become({ ...state, ...more });
  }

  async function workOut(): Promise<void> {
    if (planning) {
      planAgain = true;
      return;
    }
    planning = true;
    do {
      planAgain = false;
      if (state.kind !== 'open') break;
      const { job } = state;
      try {
        const { plan } = await desk.workOut(job);
        amend({ plan, stale: planAgain, workedOutAt: now(), notWorkedOut: undefined });
      } catch (error) {
        amend({ notWorkedOut: error instanceof Error ? error.message : String(error) });
      }
    } while (planAgain);
    planning = false;
  }

  function lay(document: unknown, keeping: Keeping) {
    const { job, remarks } = parseJob(JSON.stringify(document));
    if (job === undefined) {
      become({ kind: 'unreadable', words: remarks.filter(({ severity }) => severity === 'stop').map(remarkLine) });
      return;
    }
    const bare = {
      plan: undefined,
      workedOutAt: undefined,
      notWorkedOut: undefined,
      undo: undefined,
      weather: undefined,
    };
    become({ kind: 'open', job, stale: true, keeping, ...bare });
    void workOut();
  }

  function waitingFor(words: string): Keeping {
    const since = state.kind === 'open' && state.keeping.kind === 'waiting' ? state.keeping.since : now();
    return { kind: 'waiting', words, since };
  }

  async function send(over: boolean): Promise<void> {
    callOff();
    if (state.kind !== 'open' || saving) return;
    saving = true;
    const { job } = state;
    try {
      const saved = await server.put(id, job, over ? undefined : revision);
      if (saved.kind === 'saved') {
        revision = saved.revision;
        if (state.job === job) {
          await unsaved.remove(id);
          amend({ keeping: { kind: 'kept' } });
        } else callOff = later(() => void send(false), 0);
      } else if (saved.kind === 'seen before') amend({ keeping: { kind: 'two versions' } });
      else amend({ keeping: waitingFor(saved.words) });
    } catch (error) {
      amend({ keeping: waitingFor(error instanceof Error ? error.message : String(error)) });
      callOff = later(() => void send(false), TRY_AGAIN_AFTER_MS);
    } finally {
      saving = false;
    }
  }

  function take(job: Job, undo: string | undefined) {
    if (state.kind !== 'open') return;
    const twoVersions = state.keeping.kind === 'two versions';
    amend({ job, undo, stale: true, keeping: twoVersions ? state.keeping : { kind: 'keeping' } });
    unsaved
      .put({ id, document: job, revision, since: now().toISOString() })
      .catch((error: Error) => amend({ keeping: waitingFor(`This browser keeps nothing: ${error.message}`) }));
    callOff();
    if (!twoVersions) callOff = later(() => void send(false), SAVE_AFTER_MS);
    void workOut();
  }

  return {
    state: () => state,
    subscribe(listener) {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },

    async open() {
      const mine = await unsaved.get(id).catch(() => undefined);
      try {
        const served = await server.get(id);
        revision = mine === undefined ? served?.revision : mine.revision;
        if (mine !== undefined) {
          lay(mine.document, { kind: 'keeping' });
          await send(false);
        } else if (served === undefined) become({ kind: 'missing' });
        else lay(served.document, { kind: 'kept' });
      } catch (error) {
        const words = error instanceof Error ? error.message : String(error);
        if (mine === undefined) become({ kind: 'away', words });
        else {
          revision = mine.revision;
          lay(mine.document, { kind: 'waiting', words, since: now() });
          callOff = later(() => void send(false), TRY_AGAIN_AFTER_MS);
        }
      }
    },

    edit(changes, words) {
      if (state.kind !== 'open') return 'The job is not open.';
      const changed = changeJob(state.job, changes);
      if ('refusal' in changed) return refusalWords(changed.refusal);
      // a record is never taken back, only superseded; and a step back over it would take it along
      if (changes.some(({ path }) => path[0] === 'records')) {
        back = undefined;
        take(changed.job, undefined);
        return undefined;
      }
      // typing on in the same field is one step, not one for each letter
      if (back?.words !== words) back = { job: state.job, words };
      take(changed.job, words);
      return undefined;
    },

    undo() {
      if (back === undefined) return;
      const { job } = back;
      back = undefined;
      take(job, undefined);
    },

    async saveNow() {
      if (state.kind === 'open' && (state.keeping.kind === 'keeping' || state.keeping.kind === 'waiting'))
        await send(false);
    },
    keepMine: () => send(true),
    async takeTheirs() {
      callOff();
      const served = await server.get(id);
      if (served === undefined) return become({ kind: 'missing' });
      revision = served.revision;
      await unsaved.remove(id);
      back = undefined;
      lay(served.document, { kind: 'kept' });
    },

    async readWeather(name, bytes) {
      const weather = await desk.readWeather(id, name, bytes);
      amend({ weather, stale: true });
      await workOut();
    },
    async dropWeather() {
      await desk.dropWeather(id);
      amend({ weather: undefined, stale: true });
      await workOut();
    },

    close() {
      callOff();
      listeners.clear();
    },
  };
}
