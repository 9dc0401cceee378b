import type { Job } from '@eaveline/job';
import { editsBetween } from '@eaveline/sync/edits';
import type { ServerMark } from '@eaveline/sync/store';
import type { Documents } from './documents.ts';
import type { JobKeeper } from './jobKeeper.ts';
import type { JobServer, ServedJob } from './jobServer.ts';
import { type OnServer, wordsOf } from './keeping.ts';
import { parsed } from './parsed.ts';

export interface MeetingParts {
  readonly keeper: JobKeeper;
  readonly server: JobServer;
  readonly documents: () => Promise<Documents>;
  readonly now: () => Date;
  readonly later: (call: () => void, ms: number) => () => void;
  readonly onServer: (state: OnServer) => void;
  /** What the server had was taken in beside this device's edits; the job stands so now. */
  readonly onTaken: (job: Job) => void;
  /** The server holds a state that does not go together with this one; `theirs` where it reads. */
  readonly onApart: (words: string, theirs: Job | undefined) => void;
}

/** Brings this device and the firm's server to one state of a job. */
export interface ServerMeeting {
  /** Looks what the server has, and agrees with it. */
  meet(): Promise<void>;
  /** Sends, soon: typing goes on meanwhile. */
  sendSoon(): void;
  sendNow(): Promise<void>;
  /** Writes this device's state over whatever the server holds. */
  insist(): Promise<void>;
  close(): void;
}

const SEND_AFTER_MS = 600;
const TRY_AGAIN_AFTER_MS = 10_000;

export function makeServerMeeting(id: string, parts: MeetingParts): ServerMeeting {
  const { keeper, server, documents, now, later, onServer, onTaken, onApart } = parts;
  let callOff = () => {};
  let running: Promise<void> | undefined;
  let since: Date | undefined;

  function markOf(revision: string | undefined, heads: readonly string[]): ServerMark | undefined {
    return revision === undefined ? undefined : { revision, heads, at: now().toISOString() };
  }

  function agree(revision: string | undefined, heads: readonly string[]): void {
    const mark = markOf(revision, heads);
    if (mark !== undefined) keeper.agreed(mark);
    since = undefined;
    onServer({ kind: 'agreed', at: now() });
  }

  function wait(words: string): void {
    since ??= now();
    onServer({ kind: 'waiting', words, since });
  }

  /** Takes the server's state in as a branch from where both last agreed. False where that cannot be. */
  async function takeIn(served: ServedJob): Promise<boolean> {
    const document = await keeper.ready();
    const theirs = parsed(served.document);
    if (theirs.job === undefined) {
      onApart('What the server holds does not open here. It is left as it is.', undefined);
      return false;
    }
    const mark = keeper.kept()?.server;
    if (editsBetween(document.job(), theirs.job).length === 0) {
      agree(served.revision, document.heads());
      return true;
    }
    if (mark === undefined || !document.has(mark.heads)) {
      onApart('This device and the server hold two states of this job that did not grow from one.', theirs.job);
      return false;
    }
    const reason = {
      who: '',
      what: 'Taken in from the firm’s server',
      device: '',
      step: `server ${served.revision}`,
      kind: 'taken in',
    } as const;
    const atS = Math.floor(now().getTime() / 1000);
    // tried on a copy first: what does not read together is never written
    const { openDocument } = await documents();
    const copy = openDocument({ snapshot: document.snapshot(), changes: [] });
    copy.takeIn(theirs.job, mark.heads, reason, atS);
    if (parsed(copy.job()).job === undefined) {
      onApart('Somebody else changed this job meanwhile, and the two do not go together.', theirs.job);
      return false;
    }
    const changes = document.takeIn(theirs.job, mark.heads, reason, atS);
    const { job } = parsed(document.job());
    if (job === undefined) throw new Error('The job read together on a copy, and not in place');
    keeper.keep(job, changes);
    const last = changes.at(-1);
    const met = markOf(served.revision, last === undefined ? mark.heads : [last.hash]);
    if (met !== undefined) keeper.agreed(met);
    if (last !== undefined) onTaken(job);
    return true;
  }

  async function send(over: boolean): Promise<void> {
    for (let tries = 0; tries < 4; tries += 1) {
      const document = await keeper.ready();
      const kept = keeper.kept();
      if (kept === undefined) return;
      const heads = document.heads();
      const { server: mark } = kept;
      if (!over && mark !== undefined && mark.heads.join() === heads.join()) return agree(mark.revision, heads);
      if (!over && mark === undefined) {
        const served = await server.get(id);
        if (served !== undefined) {
          if (await takeIn(served)) continue;
          return;
        }
      }
      onServer({ kind: 'sending' });
      const saved = await server.put(id, kept.job, over ? undefined : mark?.revision);
      if (saved.kind === 'saved') {
        const again = keeper.document()?.heads().join() !== heads.join();
        agree(saved.revision, heads);
        if (again) continue;
        return;
      }
      if (saved.kind === 'refused') return wait(saved.words);
      const served = await server.get(id);
      if (served === undefined) return wait('The server had this job a moment ago and has it no more.');
      if (!(await takeIn(served))) return;
    }
    wait('Others are saving this job at the same time.');
    callOff = later(() => void run(false), TRY_AGAIN_AFTER_MS);
  }

  /** One at a time: whoever asks while one is under way waits for it and goes then. */
  async function run(over: boolean): Promise<void> {
    callOff();
    while (running !== undefined) await running;
    running = send(over)
      .catch((error: unknown) => {
        wait(wordsOf(error));
        callOff = later(() => void run(false), TRY_AGAIN_AFTER_MS);
      })
      .finally(() => {
        running = undefined;
      });
    await running;
  }

  return {
    async meet() {
      try {
        const served = await server.get(id);
        if (served !== undefined && served.revision !== keeper.kept()?.server?.revision && !(await takeIn(served)))
          return;
      } catch (error) {
        wait(wordsOf(error));
        callOff();
        callOff = later(() => void run(false), TRY_AGAIN_AFTER_MS);
        return;
      }
      await run(false);
    },
    sendSoon() {
      callOff();
      callOff = later(() => void run(false), SEND_AFTER_MS);
    },
    sendNow: () => run(false),
    insist: () => run(true),
    close: () => callOff(),
  };
}
