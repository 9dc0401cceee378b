import type { JobDocument, Reason, StoredHistory } from '@eaveline/sync';
import { type Edit, editsBetween } from '@eaveline/sync/edits';
import {
  type JobStore,
  type KeptJob,
  type LooseEdits,
  laterKnown,
  type ServerMark,
  type StoredChange,
} from '@eaveline/sync/store';
import type { Documents } from './documents.ts';
import { BEGUN, BEGUN_AGAIN, begunAs, nothingIn, READ, withoutLoose } from './historyBegun.ts';
import { countOfRevision } from './jobServer.ts';
import { type OnDevice, wordsOf } from './keeping.ts';
import type { PageChannel, PageNews } from './pageChannel.ts';
import { parsed } from './parsed.ts';

export interface KeeperParts {
  readonly store: JobStore;
  readonly documents: () => Promise<Documents>;
  readonly channel: PageChannel;
  readonly now: () => Date;
  /** Calls back after so many milliseconds; gives a way to call it off. */
  readonly later: (call: () => void, ms: number) => () => void;
  readonly onDevice: (state: OnDevice) => void;
  /** Another page changed the job; what it came to together with this page's own. */
  readonly onNews: (job: unknown, theirs: unknown) => void;
  /** What a person has to know of the history, in words. */
  readonly onNotice: (words: string) => void;
}

/** Keeps one job with its history on this device. */
export interface JobKeeper {
  /** How the job stands on this device; undefined where it is not here. */
  kept(): KeptJob | undefined;
  read(): Promise<KeptJob | undefined>;
  /**
   * Takes a job of another place onto this device, unless there is one: the one there stays, and is told.
   *
   * @param revision of the server's, where it is from there.
   */
  takeOn(job: unknown, revision: string | undefined): Promise<KeptJob>;
  /** The history, once its core is there. */
  document(): JobDocument | undefined;
  ready(): Promise<JobDocument>;
  /** True while edits of several pages do not read together. The job kept is then the last one that reads. */
  torn(): boolean;
  /** Takes edits that lead to `job`. They are being kept when this comes back, and kept when `settled` does. */
  commit(job: unknown, edits: readonly Edit[], reason: Reason): void;
  /** Keeps changes that are in the document already. */
  keep(job: unknown, changes: readonly StoredChange[]): void;
  agreed(server: ServerMark): void;
  /** A state is going to the server, which may hold it from now on; settles when that is on the device. */
  sending(heads: readonly string[], over: string | undefined): Promise<void>;
  /** Takes in what other pages have put on this device, heard of or not. */
  lookAgain(): Promise<void>;
  /** Settles when all that was taken so far is on the device, or was refused. */
  settled(): Promise<void>;
  tryAgain(): void;
  /** Lets go of the job, once all is on the device; until then it goes on being tried. */
  close(): void;
}

const TRY_AGAIN_AFTER_MS = 10_000;
/** So many loose changes make opening slow: they are folded into one. */
const FOLD_FROM = 300;

export function makeJobKeeper(id: string, parts: KeeperParts): JobKeeper {
  const { store, documents, channel, now, later, onDevice, onNews, onNotice } = parts;
  let kept: KeptJob | undefined;
  /** As read from the store, or as taken on: what the history grows from. */
  let found: KeptJob | undefined;
  /** True until it is known that what is written here takes the place of nothing that was never read. */
  let unsure = true;
  let document: JobDocument | undefined;
  let torn = false;
  let loading: Promise<JobDocument> | undefined;
  /** Edits made before the history was open. */
  let waiting: LooseEdits[] = [];
  /** Names of those the history has now, and the store does not know of yet. */
  let taken: string[] = [];
  /** All edits that lie in the store for whoever opens the history. */
  let lying: readonly LooseEdits[] = [];
  /** States written before the history was open: they hold what `waiting` holds. */
  let writtenBefore: KeptJob[] = [];
  let unwritten: StoredChange[] = [];
  let unheard: PageNews[] = [];
  let writing: Promise<void> = Promise.resolve();
  let told = '';
  let silent = false;
  let asked = 0;
  let refused = false;
  /** How many writes were refused. */
  let failures = 0;
  let closed = false;
  let callOff = () => {};
  const nowS = () => Math.floor(now().getTime() / 1000);

  /**
   * Writes all that is not written yet; what was refused goes with the next. It is on its way when this comes back,
   * also while another is: the store keeps them in order, and a page that goes now has lost nothing.
   */
  function write(marksOnly = false): void {
    asked += 1;
    const mine = asked;
    if (!marksOnly) onDevice({ kind: 'keeping' });
    const before = writing;
    const mineDone = unsure ? before.then(() => putDown(mine)) : putDown(mine);
    writing = Promise.all([before, mineDone]).then(() => {});
  }

  async function putDown(mine: number): Promise<void> {
    if (kept === undefined) return;
    let [state, changes, loose]: [KeptJob, StoredChange[], string[]] = [kept, [], []];
    const failuresBefore = failures;
    try {
      if (unsure) await makeSure(state);
      // only now: while it was made sure, a newer state may have come to stand
      [state, changes, loose] = [kept, unwritten, taken];
      [unwritten, taken] = [[], []];
      if (document === undefined) writtenBefore = [...writtenBefore, state];
      await store.add(state, changes, loose);
    } catch (error) {
      unwritten = [...changes, ...unwritten];
      taken = [...loose, ...taken];
      failures += 1;
      refused = true;
      onDevice({ kind: 'refused', words: wordsOf(error) });
      callOff();
      callOff = later(() => write(), TRY_AGAIN_AFTER_MS);
      return;
    }
    tell(state, changes);
    // what was refused since this began is not in it
    if (failures !== failuresBefore) return;
    refused = false;
    if (mine === asked) onDevice({ kind: 'kept', at: new Date(state.keptAt) });
    if (closed && mine === asked) letGo();
  }

  /** A job of another place never goes over one that this page could not read. */
  async function makeSure(state: KeptJob): Promise<void> {
    if (!unsure) return;
    const there = await store.addNew(state);
    if (there.keptAt !== state.keptAt && there.keptAt !== found?.keptAt)
      throw new Error('This device holds this job already, as it could not be read before. Reload the page to see it.');
    unsure = false;
  }

  function tell(state: KeptJob, changes: readonly StoredChange[]): void {
    const known = JSON.stringify([state.server?.count, state.sent]);
    if (silent || (changes.length === 0 && known === told)) return;
    told = known;
    channel.tell({ changes, kept: state });
  }

  function letGo(): void {
    callOff();
    silent = true;
    channel.close();
  }

  /** What another page knows of the server is known here too. */
  function know(theirs: KeptJob): void {
    if (kept === undefined) return;
    const { server: _server, sent: _sent, ...others } = kept;
    kept = { ...others, ...laterKnown(kept, theirs) };
  }

  /** The job stands so now. While edits do not read together, it is still named by the last heads that did. */
  function stands(job: unknown): void {
    const heads = torn ? undefined : document?.heads();
    const { loose: _before, ...others } = kept ?? {};
    const loose = document === undefined ? [...(found?.loose ?? []), ...waiting] : [];
    kept = {
      ...others,
      ...{ id, job, keptAt: now().toISOString() },
      ...(heads === undefined ? {} : { heads }),
      ...(loose.length === 0 ? {} : { loose }),
    };
  }

  /** The job as the document has it now stands, where it reads. */
  function standsAsMerged(merged: JobDocument): unknown {
    const job = merged.job();
    torn = parsed(job).job === undefined;
    if (!torn) stands(job);
    return job;
  }

  /** How the job was before edits that wait here: as found, or as another page has kept it since. */
  async function baseNow(): Promise<KeptJob> {
    const there = await store.kept(id);
    lying = there?.loose ?? [];
    const own = (one: KeptJob) => one.keptAt === there?.keptAt && editsBetween(one.job, there.job).length === 0;
    const base = there === undefined || writtenBefore.some(own) ? found : there;
    if (base === undefined) throw new Error('The job is not on this device');
    return base;
  }

  async function openHistory(): Promise<JobDocument> {
    const { beginDocument, openDocument } = await documents();
    const isDamaged = (history: StoredHistory) => {
      if (nothingIn(history)) return false;
      try {
        openDocument(history);
        return false;
      } catch {
        return true;
      }
    };
    let again: Reason | undefined;
    let atS = 0;
    for (;;) {
      await writing;
      const base = await baseNow();
      found = base;
      know(base);
      let history = await store.history(id);
      if (nothingIn(history)) {
        // whoever is first begins it: two beginnings of two states would never read together
        const first = withoutLoose(base);
        const begun = beginDocument(parsed(first).job ?? first, again ?? begunAs(base), atS);
        try {
          history = await store.begin(id, begun.changes);
        } catch {
          unwritten.push(...begun.changes); // no room for it now: it is written, and refused in words, with the rest
          return begun.document;
        }
      }
      try {
        const opened = openDocument(history);
        if (history.changes.length >= FOLD_FROM) await fold((all) => openDocument(all).snapshot());
        return withProjection(opened, base);
      } catch (error) {
        if (!(error instanceof Error) || error.name !== 'HistoryUnreadable') throw error;
        await store.setAside(id, now().toISOString(), isDamaged);
        onNotice(
          `The history of this job does not read (${error.message}). The job stands as it was last kept, and a new history begins here. What does not read is laid aside on this device, whole.`,
        );
        again = { ...BEGUN, what: BEGUN_AGAIN };
        atS = nowS();
      }
    }
  }

  async function fold(snapshotOf: (history: StoredHistory) => Uint8Array): Promise<void> {
    try {
      await store.fold(id, snapshotOf);
    } catch (error) {
      onNotice(`The history could not be folded together: ${wordsOf(error)} It is whole as it is.`);
    }
  }

  /** A state kept while the history was closed is an edit made on the state it grew from. */
  function withProjection(opened: JobDocument, base: KeptJob): JobDocument {
    const reason: Reason = {
      ...BEGUN,
      what: 'Changed before the history was open',
      step: `kept ${base.keptAt}`,
      kind: 'edit',
    };
    // a state that names no moment had no history yet: it grew from what the history began with
    const [first] = opened.moments();
    const grownFrom = base.heads ?? (first === undefined ? [] : [first.hash]);
    // what differs by loose edits alone is taken in by these, under their own names
    if (opened.has(grownFrom) && base.loose !== undefined) return opened;
    if (opened.has(grownFrom))
      unwritten.push(...opened.takeIn(base.job, grownFrom, reason, Math.floor(Date.parse(base.keptAt) / 1000)));
    else {
      const change = opened.commit(editsBetween(opened.job(), base.job), reason, nowS());
      if (change !== undefined) unwritten.push(change);
    }
    return opened;
  }

  function take(edits: readonly Edit[], reason: Reason, atS: number): void {
    const change = document?.commit(edits, reason, atS);
    if (change !== undefined) unwritten.push(change);
  }

  function hear(news: PageNews): void {
    if (document === undefined) {
      unheard.push(news);
      return;
    }
    know(news.kept);
    try {
      if (document.merge(news.changes.map(({ bytes }) => bytes))) heard(document, news.kept);
      if (document.lacks()) void catchUp(news.kept);
    } catch (error) {
      onNotice(`What another page changed does not read here: ${wordsOf(error)} It is kept. Reload this page.`);
    }
  }
  channel.onNews(hear);

  function heard(merged: JobDocument, theirs: KeptJob): void {
    const job = standsAsMerged(merged);
    if (!torn && merged.heads().join() !== theirs.heads?.join()) write();
    onNews(job, theirs.job);
  }

  /** News was missed, as where a browser had laid the page to sleep: all of it lies in the store. */
  async function catchUp(theirs: KeptJob): Promise<void> {
    try {
      const history = await store.history(id);
      if (document?.mergeHistory(history)) heard(document, theirs);
    } catch (error) {
      onNotice(`What another page changed could not be read: ${wordsOf(error)} It is kept. Reload this page.`);
    }
  }

  /** Takes in edits that lie in the store and those that wait here, each once, whichever page was first. */
  function takeLoose(opened: JobDocument): void {
    const known = new Map(opened.moments().map(({ hash, reason: { loose } }) => [loose, hash]));
    const own = new Set(waiting.map(({ id: each }) => each));
    const [first] = opened.moments();
    for (const { id: loose, edits, reason, atS, over, after } of [
      ...lying.filter(({ id }) => !own.has(id)),
      ...waiting,
    ]) {
      taken.push(loose);
      if (known.has(loose)) continue;
      // two pages may take them at the same moment: from where they were made both come to the same change
      const before = after === undefined ? undefined : known.get(after);
      const from = before !== undefined ? [before] : (over ?? (first === undefined ? [] : [first.hash]));
      if (!opened.has(from)) {
        take(edits, { ...reason, loose }, atS);
        continue;
      }
      const change = opened.commitOn(from, edits, { ...reason, loose }, atS);
      if (change === undefined) continue;
      unwritten.push(change);
      known.set(loose, change.hash);
    }
    waiting = [];
    lying = [];
  }

  async function load(): Promise<JobDocument> {
    const opened = await openHistory();
    const base = found;
    document = opened;
    const before = parsed(opened.job()).job;
    const settled = before === undefined ? undefined : opened.settle(editsBetween(opened.job(), before), READ);
    if (settled !== undefined) unwritten.push(settled);
    const [first] = opened.moments();
    const mark = kept?.server;
    // taken on from the server before there was a history: they agreed on what it began with
    if (
      kept !== undefined &&
      mark?.heads.length === 0 &&
      first?.reason.kind === 'begun' &&
      first.reason.what !== BEGUN_AGAIN
    ) {
      kept = { ...kept, server: { ...mark, heads: [first.hash] } };
    }
    // a history begun again does not know the moment of before; what the server holds is still what it was
    if (kept !== undefined && mark !== undefined && !opened.has(mark.heads) && first?.reason.what === BEGUN_AGAIN) {
      kept = { ...kept, server: { ...mark, heads: [] } };
    }
    takeLoose(opened);
    writtenBefore = [];
    standsAsMerged(opened);
    if (taken.length > 0 || unwritten.length > 0 || kept?.heads?.join() !== base?.heads?.join()) write();
    for (const news of unheard) hear(news);
    unheard = [];
    return opened;
  }

  return {
    kept: () => kept,
    async read() {
      found = await store.kept(id);
      kept = found;
      unsure = found === undefined;
      if (kept !== undefined) onDevice({ kind: 'kept', at: new Date(kept.keptAt) });
      return kept;
    },
    async takeOn(job, revision) {
      const keptAt = now().toISOString();
      const count = revision === undefined ? 0 : countOf(revision, 0);
      const server = revision === undefined ? {} : { server: { revision, heads: [], at: keptAt, count } };
      const taken: KeptJob = { id, job, keptAt, ...server };
      found = taken;
      kept = taken;
      try {
        const there = await store.addNew(taken);
        found = there;
        unsure = false;
        if (waiting.length === 0) {
          kept = there;
          onDevice({ kind: 'kept', at: new Date(there.keptAt) });
        } else if (there.keptAt !== taken.keptAt) {
          // edited meanwhile, and another page was quicker: the edits lie beside its state until the history is open
          kept = { ...there, loose: [...(there.loose ?? []), ...waiting] };
        }
        return there;
      } catch (error) {
        refused = true;
        onDevice({ kind: 'refused', words: wordsOf(error) });
        callOff();
        callOff = later(() => write(), TRY_AGAIN_AFTER_MS);
        return taken;
      }
    },
    document: () => document,
    ready() {
      loading ??= load();
      loading.catch(() => {
        if (document === undefined) loading = undefined; // next time may go better
      });
      return loading;
    },
    torn: () => torn,
    commit(job, edits, reason) {
      const atS = nowS();
      if (document === undefined) {
        const [heads, before] = [found?.heads, waiting.at(-1)];
        waiting.push({
          ...{ id: `${reason.step} ${waiting.length}`, edits, reason, atS },
          ...(heads === undefined ? {} : { over: heads }),
          ...(before === undefined ? {} : { after: before.id }),
        });
        stands(job);
      } else {
        take(edits, reason, atS);
        // an edit may mend what did not read together
        if (torn) torn = editsBetween(document.job(), job).length > 0;
        stands(job);
      }
      write();
    },
    keep(job, changes) {
      unwritten.push(...changes);
      stands(job);
      write();
    },
    agreed(server) {
      if (kept === undefined) return;
      know({ ...kept, server: { ...server, count: countOf(server.revision, kept.server?.count ?? 0) } });
      write(true);
    },
    async lookAgain() {
      const [there, history] = [await store.kept(id), await store.history(id)];
      if (there === undefined || document === undefined) return;
      know(there);
      if (document.mergeHistory(history)) heard(document, there);
    },
    sending(heads, over) {
      if (kept === undefined) return writing;
      know({ ...kept, sent: [{ heads, over }] });
      write(true);
      return writing;
    },
    settled: () => writing,
    tryAgain() {
      if (!refused) return;
      callOff();
      write();
    },
    close() {
      closed = true;
      void writing.then(() => {
        if (!refused) letGo();
      });
    },
  };
}

/** A count that grows with the server's revisions, and goes on where the server was put back to an earlier one. */
function countOf(revision: string, before: number): number {
  const counted = countOfRevision(revision);
  return counted >= before ? counted : before + 1;
}
