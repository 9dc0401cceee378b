import type { JobDocument, Reason } from '@eaveline/sync';
import { type Edit, editsBetween } from '@eaveline/sync/edits';
import type { JobStore, KeptJob, ServerMark, StoredChange } from '@eaveline/sync/store';
import type { Documents } from './documents.ts';
import { type OnDevice, wordsOf } from './keeping.ts';
import type { PageChannel, PageNews } from './pageChannel.ts';

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
  /** Takes a job of another place onto this device. */
  takeOn(job: unknown, server: ServerMark | undefined): void;
  /** The history, once its core is there. */
  document(): JobDocument | undefined;
  ready(): Promise<JobDocument>;
  /** Takes edits that lead to `job`. They are being kept when this comes back, and kept when `settled` does. */
  commit(job: unknown, edits: readonly Edit[], reason: Reason): void;
  /** Keeps changes that are in the document already. */
  keep(job: unknown, changes: readonly StoredChange[]): void;
  agreed(server: ServerMark): void;
  /** Settles when all that was taken so far is on the device, or was refused. */
  settled(): Promise<void>;
  tryAgain(): void;
  close(): void;
}

const TRY_AGAIN_AFTER_MS = 10_000;
/** So many loose changes make opening slow: they are folded into one. */
const FOLD_FROM = 300;

const BEGUN: Reason = { who: '', what: 'Begun', device: '', step: 'begun', kind: 'begun' };

export function makeJobKeeper(id: string, parts: KeeperParts): JobKeeper {
  const { store, documents, channel, now, later, onDevice, onNews, onNotice } = parts;
  let kept: KeptJob | undefined;
  /** As read from the store, or as taken on: what the history grows from. */
  let found: KeptJob | undefined;
  let document: JobDocument | undefined;
  let loading: Promise<JobDocument> | undefined;
  /** Edits made before the history was open. */
  let waiting: { readonly edits: readonly Edit[]; readonly reason: Reason; readonly atS: number }[] = [];
  let unwritten: StoredChange[] = [];
  let unheard: PageNews[] = [];
  let writing: Promise<void> = Promise.resolve();
  let asked = 0;
  let callOff = () => {};
  const nowS = () => Math.floor(now().getTime() / 1000);

  /** Writes one after another, each with all that is not written yet; what was refused goes with the next. */
  function write(): void {
    asked += 1;
    const mine = asked;
    onDevice({ kind: 'keeping' });
    writing = writing.then(async () => {
      if (kept === undefined) return;
      const [state, changes] = [kept, unwritten];
      unwritten = [];
      try {
        await store.add(state, changes);
        if (changes.length > 0) channel.tell({ changes, kept: state });
        if (mine === asked) onDevice({ kind: 'kept', at: new Date(state.keptAt) });
      } catch (error) {
        unwritten = [...changes, ...unwritten];
        onDevice({ kind: 'refused', words: wordsOf(error) });
        callOff();
        callOff = later(write, TRY_AGAIN_AFTER_MS);
      }
    });
  }

  function stands(job: unknown, more: Partial<KeptJob> = {}): void {
    const heads = document?.heads();
    kept = { ...kept, id, job, keptAt: now().toISOString(), ...(heads === undefined ? {} : { heads }), ...more };
  }

  async function openHistory(): Promise<JobDocument> {
    const { beginDocument, openDocument } = await documents();
    const base = found;
    if (base === undefined) throw new Error('The job is not on this device');
    const history = await store.history(id);
    if (history.snapshot === undefined && history.changes.length === 0) {
      const begun = beginDocument(base.job, BEGUN, 0);
      unwritten.push(...begun.changes);
      return begun.document;
    }
    let opened: JobDocument;
    try {
      opened = openDocument(history);
    } catch (error) {
      if (!(error instanceof Error) || error.name !== 'HistoryUnreadable') throw error;
      await store.setAside(id, now().toISOString());
      onNotice(
        `The history of this job does not read (${error.message}). The job stands as it was last kept, and a new history begins here. What does not read is laid aside on this device, whole.`,
      );
      const begun = beginDocument(base.job, { ...BEGUN, what: 'Begun again: the history before did not read' }, nowS());
      unwritten.push(...begun.changes);
      return begun.document;
    }
    if (history.changes.length >= FOLD_FROM) {
      await store
        .fold(id, (all) => openDocument(all).snapshot())
        .catch((error: unknown) =>
          onNotice(`The history could not be folded together: ${wordsOf(error)} It is whole as it is.`),
        );
    }
    return withProjection(opened, base);
  }

  /** A state kept while the history was closed is an edit made on the state it grew from. */
  function withProjection(opened: JobDocument, base: KeptJob): JobDocument {
    const reason: Reason = {
      ...BEGUN,
      what: 'Changed before the history was open',
      step: `kept ${base.keptAt}`,
      kind: 'edit',
    };
    if (base.heads !== undefined && opened.has(base.heads)) {
      unwritten.push(...opened.takeIn(base.job, base.heads, reason, nowS()));
    } else {
      const change = opened.commit(editsBetween(opened.job(), base.job), reason, nowS());
      if (change !== undefined) unwritten.push(change);
    }
    return opened;
  }

  function take(edits: readonly Edit[], reason: Reason, atS: number): void {
    const change = document?.commit(edits, reason, atS);
    if (change !== undefined) unwritten.push(change);
  }

  function hear({ changes, kept: theirs }: PageNews): void {
    if (document === undefined) {
      unheard.push({ changes, kept: theirs });
      return;
    }
    if (!document.merge(changes.map(({ bytes }) => bytes))) return;
    const job = document.job();
    if (theirs.server !== undefined) kept = { ...(kept as KeptJob), server: theirs.server };
    stands(job);
    if (theirs.heads === undefined || document.heads().join() !== theirs.heads.join()) write();
    onNews(job, theirs.job);
  }
  channel.onNews(hear);

  async function load(): Promise<JobDocument> {
    const opened = await openHistory();
    document = opened;
    for (const { edits, reason, atS } of waiting) take(edits, reason, atS);
    waiting = [];
    const job = opened.job();
    stands(job);
    if (unwritten.length > 0) write();
    for (const news of unheard) hear(news);
    unheard = [];
    return opened;
  }

  return {
    kept: () => kept,
    async read() {
      found = await store.kept(id);
      kept = found;
      if (kept !== undefined) onDevice({ kind: 'kept', at: new Date(kept.keptAt) });
      return kept;
    },
    takeOn(job, server) {
      found = { id, job, keptAt: now().toISOString(), ...(server === undefined ? {} : { server }) };
      kept = found;
      write();
    },
    document: () => document,
    ready() {
      loading ??= load();
      loading.catch(() => {
        loading = undefined; // next time may go better
      });
      return loading;
    },
    commit(job, edits, reason) {
      const atS = nowS();
      if (document === undefined) waiting.push({ edits, reason, atS });
      else take(edits, reason, atS);
      stands(job);
      write();
    },
    keep(job, changes) {
      unwritten.push(...changes);
      stands(job);
      write();
    },
    agreed(server) {
      if (kept === undefined) return;
      kept = { ...kept, server };
      write();
    },
    settled: () => writing,
    tryAgain() {
      callOff();
      if (unwritten.length > 0 || waiting.length > 0) write();
    },
    close() {
      callOff();
      channel.close();
    },
  };
}
