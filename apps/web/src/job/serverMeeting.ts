import type { Job } from '@eaveline/job';
import type { JobDocument, Reason } from '@eaveline/sync';
import { editsBetween } from '@eaveline/sync/edits';
import type { ServerMark, StoredChange } from '@eaveline/sync/store';
import type { Documents } from './documents.ts';
import type { JobKeeper } from './jobKeeper.ts';
import { countOfRevision, type JobServer, NEVER_SAVED, type ServedJob } from './jobServer.ts';
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

/** What the server says it has of the job; undefined where it has none. */
export type ServerAnswer = Promise<ServedJob | undefined>;

/** Brings this device and the firm's server to one state of a job. */
export interface ServerMeeting {
  /** Looks what the server has, and agrees with it. It is not asked again where it was a moment ago. */
  meet(answer?: ServerAnswer): Promise<void>;
  /** Sends, soon: typing goes on meanwhile. */
  sendSoon(): void;
  sendNow(): Promise<void>;
  /** Writes this device's state over the one a person saw on the server. One saved since is shown first. */
  insist(): Promise<void>;
  /** What is on its way goes to its end; nothing is begun after that. */
  close(): void;
}

/** Where a state of the server's grew from, and the saves of others that led to it. */
interface Grown {
  readonly base: readonly string[];
  readonly since: readonly ServedJob[];
}

/** A document as a job where it reads as one, as it is where it does not. */
const readable = (document: unknown) => parsed(document).job ?? document;

const SEND_AFTER_MS = 600;
const TRY_AGAIN_AFTER_MS = 10_000;
/** So often what another page brings is waited for. */
const AWAITED_AT_MOST = 5;
/** So many states of this device are compared with one the server saved. */
const STOOD_AT_MOST = 12;
/** So many saves of the server are looked through for ones of this device. */
const LOOKED_AT_MOST = 8;

export function makeServerMeeting(id: string, parts: MeetingParts): ServerMeeting {
  const { keeper, server, documents, now, later, onServer, onTaken, onApart } = parts;
  let callOff = () => {};
  let running: Promise<void> | undefined;
  let since: Date | undefined;
  let closed = false;
  /** Revision of the state a person was shown as another one. */
  let shown: string | undefined;
  /** How often in a row what another page brings was waited for. */
  let awaited = 0;

  function markOf(revision: string | undefined, heads: readonly string[]): ServerMark | undefined {
    return revision === undefined ? undefined : { revision, heads, at: now().toISOString() };
  }

  function agree(revision: string | undefined, heads: readonly string[]): void {
    const mark = markOf(revision, heads);
    const known = keeper.kept();
    const same = known?.server?.revision === revision && known?.server?.heads.join() === heads.join();
    if (mark !== undefined && !(same && known?.sent === undefined)) keeper.agreed(mark);
    since = undefined;
    awaited = 0;
    onServer({ kind: 'agreed', at: now() });
  }

  function wait(words: string): void {
    since ??= now();
    onServer({ kind: 'waiting', words, since });
  }

  function apart(words: string, served: ServedJob, theirs: Job | undefined): false {
    shown = served.revision;
    onApart(words, theirs);
    return false;
  }

  /**
   * What of this device the server's state grew from, and what was saved there since: from the state both last agreed
   * on, save by save. A save of this device whose answer never came is no news of somebody else.
   */
  async function grownFrom(document: JobDocument, served: ServedJob): Promise<Grown | undefined> {
    const { server: mark, sent = [] } = keeper.kept() ?? {};
    const names = (heads: readonly string[]) => heads.length > 0 && document.has(heads);
    const agreed = mark !== undefined && names(mark.heads) ? mark.heads : undefined;
    // where the device had no room to say what was sent, it still stood there
    const stood = [
      ...sent.map(({ heads }) => heads).filter(names),
      ...document.statesSince(agreed ?? [], STOOD_AT_MOST),
    ];
    const states = stood.map((heads) => ({ heads, job: readable(document.jobAt(heads)) }));
    let base = agreed;
    let since: ServedJob[] = [];
    for (const saved of await savesSince(mark, served)) {
      const state = readable(saved.document);
      const ours = states.find(({ job }) => editsBetween(job, state).length === 0);
      if (ours !== undefined) {
        base = ours.heads;
        since = []; // it was saved over them, so it has them
      } else if (base !== undefined) since = [...since, saved];
    }
    return base && { base, since };
  }

  /** The server's saves after a mark, the newest among them; of very many the first few and the newest. */
  async function savesSince(mark: ServerMark | undefined, newest: ServedJob): Promise<readonly ServedJob[]> {
    const saves: ServedJob[] = [];
    const last = countOfRevision(newest.revision);
    const first = mark === undefined ? 1 : countOfRevision(mark.revision) + 1;
    // where it does not count, only the newest is known
    for (let count = first; count < last && saves.length < LOOKED_AT_MOST - 1; count += 1) {
      const saved = await server.stateAt(id, count);
      if (saved !== undefined) saves.push(saved);
    }
    return [...saves, newest];
  }

  /**
   * An answer that took its time may be of before what is known by now, and so may the one asked for anew: what it is
   * held against was known before it was asked for. A server that was put back to an earlier state answers with that.
   */
  async function notOlder(first: ServedJob): Promise<ServedJob> {
    let answer = first;
    for (;;) {
      const known = countOfRevision(keeper.kept()?.server?.revision);
      if (!(countOfRevision(answer.revision) < known)) return answer;
      const fresh = await server.get(id);
      if (fresh === undefined) return answer;
      answer = fresh;
      if (countOfRevision(answer.revision) < known) return answer;
      await keeper.lookAgain();
    }
  }

  /**
   * Another page of this device agreed with the server on a state that has not come to this one: that is on its way,
   * and asked for again a few times before a person is.
   */
  function awaitsOther(document: JobDocument): boolean {
    const mark = keeper.kept()?.server;
    if (mark === undefined || mark.heads.length === 0 || document.has(mark.heads)) return false;
    awaited += 1;
    if (awaited > AWAITED_AT_MOST) return false;
    wait('Another page of this device is meeting the server.');
    callOff();
    callOff = later(() => void run(() => send(false)), TRY_AGAIN_AFTER_MS);
    return true;
  }

  /** Takes the server's state in as a branch from where both last agreed. False where that cannot be. */
  async function takeIn(answer: ServedJob): Promise<boolean> {
    const document = await keeper.ready();
    const { openDocument } = await documents();
    // what another page sent or heard before this answer came is on the device by now
    await keeper.lookAgain();
    const served = await notOlder(answer);
    const theirs = parsed(served.document).job;
    if (theirs === undefined)
      return apart('What the server holds does not open here. It is left as it is.', served, undefined);
    if (theirs.id !== id)
      return apart(`What the server holds as ${id} calls itself ${theirs.id}. It is left as it is.`, served, undefined);
    if (editsBetween(document.job(), theirs).length === 0) {
      agree(served.revision, document.heads());
      return true;
    }
    const known = keeper.kept()?.server?.revision;
    const grown = await grownFrom(document, served);
    // another page agreed on more while the saves were looked through
    if (keeper.kept()?.server?.revision !== known) return takeIn(served);
    if (grown === undefined && awaitsOther(document)) return false;
    if (grown === undefined)
      return apart(
        'This device and the server hold two states of this job that did not grow from one.',
        served,
        theirs,
      );
    // tried on a copy first: what does not read together is never written
    const copy = openDocument({ snapshot: document.snapshot(), changes: [] });
    takeSaves(copy, grown);
    if (parsed(copy.job()).job === undefined)
      return apart('Somebody else changed this job meanwhile, and the two do not go together.', served, theirs);
    const { changes, at } = takeSaves(document, grown);
    const { job } = parsed(document.job());
    if (job === undefined) throw new Error('The job read together on a copy, and not in place');
    if (changes.length > 0) keeper.keep(job, changes);
    const met = markOf(served.revision, at);
    if (met !== undefined) keeper.agreed(met);
    if (changes.length > 0) onTaken(job);
    return true;
  }

  /**
   * Takes the saves of others in, each as a branch from the one before it: whichever page does it, and from whichever
   * mark, comes to the very same changes.
   */
  function takeSaves(document: JobDocument, { base, since }: Grown) {
    let at = base;
    const changes: StoredChange[] = [];
    for (const { document: saved, revision, savedAtS } of since) {
      const reason: Reason = {
        who: '',
        what: 'Taken in from the firm’s server',
        device: '',
        step: `server ${revision}`,
        kind: 'taken in',
      };
      const taken = document.takeIn(readable(saved), at, reason, savedAtS ?? document.lastAtS(at));
      changes.push(...taken);
      const [branch] = taken;
      if (branch !== undefined) at = [branch.hash];
    }
    return { changes, at };
  }

  async function send(over: boolean): Promise<void> {
    let insists = over;
    for (let tries = 0; tries < 4 && !closed; tries += 1) {
      const document = await keeper.ready();
      const kept = keeper.kept();
      if (kept === undefined) return;
      if (keeper.torn()) return wait('Edits made apart do not go together. Pick one first.');
      const heads = document.heads();
      const { server: mark } = kept;
      if (!insists && mark !== undefined && !document.has(mark.heads)) {
        // another page agreed on more than has come to this one: sent over that, its edits would be taken back
        await keeper.lookAgain();
        if (keeper.document()?.has(mark.heads)) continue;
        const served = await server.get(id);
        if (served === undefined) return gone();
        if (await takeIn(served)) continue;
        return;
      }
      if (!insists && mark !== undefined && mark.heads.join() === heads.join()) return agree(mark.revision, heads);
      if (!insists && mark === undefined) {
        const served = await server.get(id);
        if (served !== undefined) {
          if (await takeIn(served)) continue;
          return;
        }
      }
      onServer({ kind: 'sending' });
      // the page may go before the answer comes: the server may hold this state from now on
      const over = insists ? shown : (mark?.revision ?? NEVER_SAVED);
      await keeper.sending(heads, over);
      const saved = await server.put(id, kept.job, over);
      insists = false;
      if (saved.kind === 'saved') {
        const again = keeper.document()?.heads().join() !== heads.join();
        agree(saved.revision, heads);
        if (again) continue;
        return;
      }
      if (saved.kind === 'refused') return wait(saved.words);
      const served = await server.get(id);
      if (served === undefined) return gone();
      if (!(await takeIn(served))) return;
    }
    if (closed) return;
    wait('Others are saving this job at the same time.');
    callOff = later(() => void run(() => send(false)), TRY_AGAIN_AFTER_MS);
  }

  function gone(): void {
    wait('The server had this job and has it no more. It is on this device.');
  }

  async function look(answer: ServerAnswer | undefined): Promise<void> {
    const served = await (answer ?? server.get(id));
    const known = keeper.kept()?.server;
    if (served === undefined && known !== undefined) return gone();
    if (served !== undefined && served.revision !== known?.revision && !(await takeIn(served))) return;
    await send(false);
  }

  /** One at a time: whoever asks while one is under way waits for it and goes then. */
  async function run(work: () => Promise<void>): Promise<void> {
    callOff();
    while (running !== undefined) await running;
    if (closed) return;
    running = work()
      .catch((error: unknown) => {
        wait(wordsOf(error));
        callOff();
        if (!closed) callOff = later(() => void run(() => send(false)), TRY_AGAIN_AFTER_MS);
      })
      .finally(() => {
        running = undefined;
      });
    await running;
  }

  return {
    meet: (answer) => run(() => look(answer)),
    sendSoon() {
      callOff();
      if (!closed) callOff = later(() => void run(() => send(false)), SEND_AFTER_MS);
    },
    sendNow: () => run(() => send(false)),
    insist: () => run(() => send(true)),
    close() {
      closed = true;
      callOff();
    },
  };
}
