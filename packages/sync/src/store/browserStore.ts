import { type JobRow, type KnownRow, keptFrom, type LooseRow, rowsOf } from './jobRows.ts';
import {
  type JobStore,
  type KeptJob,
  type KnownOfServer,
  laterKnown,
  type StoredChange,
  StoreFull,
  StoreNewer,
} from './jobStore.ts';
import { together } from './together.ts';

const DATABASE = 'eaveline';
/**
 * 1 kept whole documents that waited for the server, in `unsaved`. 2 kept histories. 3 keeps what several pages know
 * beside each other, so that a page writes without having read.
 */
const VERSION = 3;
const JOBS = 'jobs';
/** Edits that wait for the history, each a row. */
const LOOSE = 'loose';
/** What each page knows of the server, a row for each page. */
const KNOWN = 'known';
const CHANGES = 'changes';
const SNAPSHOTS = 'snapshots';
const ASIDE = 'aside';
const UNSAVED = 'unsaved';

interface ChangeRow extends StoredChange {
  readonly id: string;
}

/** What version 1 kept of a job whose edits waited for the server. */
interface WaitedRow {
  readonly id: string;
  readonly document: unknown;
  readonly since: string;
}

/** A job that waited for the server is a job of this device as any other. */
function asKept({ id, document, since }: WaitedRow): KeptJob {
  return { id, job: document, keptAt: since };
}

const JOB_PARTS = [JOBS, LOOSE, KNOWN, UNSAVED];

export interface BrowserStoreParts {
  /** Names this page among those of this device, for as long as it is open. */
  readonly page: string;
  /** Called when a newer version of the app in another tab asks this one to let go of the database. */
  readonly onNewer?: () => void;
  /** Called when an older version of the app in another tab holds the database. */
  readonly onHeld?: () => void;
  /** Called when the database is open. */
  readonly onOpen?: () => void;
}

function asked<T>(request: IDBRequest<T>): Promise<T> {
  return new Promise((resolve, reject) => {
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(inWords(request.error));
  });
}

/** Settles when the whole transaction is on the device, not when its requests have been taken. */
function whole(transaction: IDBTransaction): Promise<void> {
  return new Promise((resolve, reject) => {
    transaction.oncomplete = () => resolve();
    transaction.onabort = () => reject(inWords(transaction.error));
    transaction.onerror = (event) => reject(inWords((event.target as IDBRequest).error ?? transaction.error));
  });
}

function inWords(error: DOMException | null): Error {
  if (error?.name === 'QuotaExceededError') return new StoreFull('This device has no more room.');
  if (error?.name === 'VersionError') return new StoreNewer('A newer Eaveline has kept jobs on this device.');
  return new Error(error?.message || 'The browser kept nothing and did not say why.');
}

function rangeOf(id: string): IDBKeyRange {
  return IDBKeyRange.bound([id], [id, []]); // an array sorts after every string: all keys that begin with the id
}

function upgrade(database: IDBDatabase, transaction: IDBTransaction, from: number): void {
  if (from < 1) database.createObjectStore(UNSAVED, { keyPath: 'id' });
  if (from < 2) {
    database.createObjectStore(JOBS, { keyPath: 'id' });
    database.createObjectStore(CHANGES, { keyPath: ['id', 'hash'] });
    database.createObjectStore(SNAPSHOTS, { keyPath: 'id' });
    database.createObjectStore(ASIDE, { keyPath: ['id', 'at'] });
  }
  if (from < 3) {
    database.createObjectStore(LOOSE, { keyPath: ['id', 'name'] });
    database.createObjectStore(KNOWN, { keyPath: ['id', 'page'] });
    const rows: IDBRequest<KeptJob[]> = transaction.objectStore(JOBS).getAll();
    rows.onsuccess = () => {
      for (const kept of rows.result) putRows(transaction, kept, FOLDED);
    };
  }
}

/** The name under which what pages of before knew is folded together. */
const FOLDED = '';

function putRows(transaction: IDBTransaction, kept: KeptJob, page: string): void {
  const { job, loose, known } = rowsOf(kept, page);
  transaction.objectStore(JOBS).put(job);
  for (const row of loose) transaction.objectStore(LOOSE).put(row);
  if (known !== undefined) transaction.objectStore(KNOWN).put(known);
}

/** Jobs in the browser's own database; they outlive the tab, the server and the computer's night. */
export function browserStore({ page, onNewer, onHeld, onOpen }: BrowserStoreParts): JobStore {
  let opened: Promise<IDBDatabase> | undefined;
  /** What this page has put down of the server, by job: what it puts down next never goes back behind it. */
  const knownHere = new Map<string, KnownOfServer>();

  function open(): Promise<IDBDatabase> {
    if (opened !== undefined) return opened;
    opened = new Promise<IDBDatabase>((resolve, reject) => {
      const request = indexedDB.open(DATABASE, VERSION);
      request.onupgradeneeded = ({ oldVersion }) =>
        upgrade(request.result, request.transaction as IDBTransaction, oldVersion);
      request.onblocked = () => onHeld?.();
      request.onerror = () => reject(inWords(request.error));
      request.onsuccess = () => {
        const database = request.result;
        database.onversionchange = () => {
          database.close();
          opened = undefined;
          onNewer?.();
        };
        database.onclose = () => {
          opened = undefined; // the browser took it away: the next call opens it again
        };
        onOpen?.();
        resolve(database);
      };
    });
    opened.catch(() => {
      opened = undefined; // next time may go better
    });
    return opened;
  }

  async function reading(names: string[]) {
    return (await open()).transaction(names, 'readonly');
  }

  async function writing(names: string[], write: (transaction: IDBTransaction) => void | Promise<void>) {
    const transaction = (await open()).transaction(names, 'readwrite', { durability: 'strict' });
    const done = whole(transaction);
    try {
      await write(transaction);
      transaction.commit(); // does not wait for the last answers to come back to a page that may be going
    } catch (error) {
      try {
        transaction.abort();
      } catch {
        // it had ended by itself; `done` says how
      }
      await done.catch(() => {});
      throw error instanceof DOMException ? inWords(error) : error;
    }
    await done;
  }

  async function history(transaction: IDBTransaction, id: string) {
    const [snapshot, rows] = await Promise.all([
      asked(
        transaction.objectStore(SNAPSHOTS).get(id) as IDBRequest<
          { readonly id: string; readonly bytes: Uint8Array } | undefined
        >,
      ),
      asked(transaction.objectStore(CHANGES).getAll(rangeOf(id)) as IDBRequest<ChangeRow[]>),
    ]);
    return { snapshot: snapshot?.bytes, changes: rows.map(({ hash, bytes }) => ({ hash, bytes })) };
  }

  /** The job as it lies there while a transaction is open. */
  async function keptIn(transaction: IDBTransaction, id: string): Promise<KeptJob | undefined> {
    const rows = <T>(name: string) => asked(transaction.objectStore(name).getAll(rangeOf(id)) as IDBRequest<T[]>);
    const [job, loose, known, waited] = await Promise.all([
      asked(transaction.objectStore(JOBS).get(id) as IDBRequest<JobRow | undefined>),
      rows<LooseRow>(LOOSE),
      rows<KnownRow>(KNOWN),
      asked(transaction.objectStore(UNSAVED).get(id) as IDBRequest<WaitedRow | undefined>),
    ]);
    return job === undefined ? waited && asKept(waited) : keptFrom(job, loose, known);
  }

  return {
    async list() {
      const transaction = await reading(JOB_PARTS);
      const all = <T>(name: string) => asked(transaction.objectStore(name).getAll() as IDBRequest<T[]>);
      const [jobs, loose, known, waited] = await Promise.all([
        all<JobRow>(JOBS),
        all<LooseRow>(LOOSE),
        all<KnownRow>(KNOWN),
        all<WaitedRow>(UNSAVED),
      ]);
      const here = new Set(jobs.map(({ id }) => id));
      const of = <T extends { readonly id: string }>(rows: readonly T[], id: string) =>
        rows.filter((row) => row.id === id);
      return [
        ...jobs.map((job) => keptFrom(job, of(loose, job.id), of(known, job.id))),
        ...waited.filter(({ id }) => !here.has(id)).map(asKept),
      ];
    },
    async kept(id) {
      return keptIn(await reading(JOB_PARTS), id);
    },
    async history(id) {
      return history(await reading([SNAPSHOTS, CHANGES]), id);
    },
    async addNew(kept) {
      let there = kept;
      await writing(JOB_PARTS, async (transaction) => {
        const before = await keptIn(transaction, kept.id);
        if (before === undefined) putRows(transaction, kept, page);
        else there = before;
        knownHere.set(kept.id, there);
      });
      return there;
    },
    async begin(id, changes) {
      let lies = { snapshot: undefined as Uint8Array | undefined, changes };
      await writing([SNAPSHOTS, CHANGES], async (transaction) => {
        const before = await history(transaction, id);
        if (before.snapshot !== undefined || before.changes.length > 0) lies = before;
        else for (const change of changes) transaction.objectStore(CHANGES).put({ id, ...change });
      });
      return lies;
    },
    async add(kept, changes, taken = []) {
      const known = laterKnown(knownHere.get(kept.id) ?? {}, kept);
      knownHere.set(kept.id, known);
      // asks for nothing: it is on its way to the device before this page can go
      await writing([...JOB_PARTS, CHANGES], (transaction) => {
        putRows(transaction, { ...kept, ...known }, page);
        for (const name of taken) transaction.objectStore(LOOSE).delete([kept.id, name]);
        for (const change of changes) transaction.objectStore(CHANGES).put({ id: kept.id, ...change });
        transaction.objectStore(UNSAVED).delete(kept.id);
      });
    },
    async fold(id, snapshotOf) {
      await writing([SNAPSHOTS, CHANGES, ...JOB_PARTS], async (transaction) => {
        const bytes = snapshotOf(await history(transaction, id));
        transaction.objectStore(SNAPSHOTS).put({ id, bytes });
        transaction.objectStore(CHANGES).delete(rangeOf(id));
        const kept = await keptIn(transaction, id);
        if (kept === undefined) return;
        // pages that are open put what they know beside it again
        transaction.objectStore(KNOWN).delete(rangeOf(id));
        putRows(transaction, kept, FOLDED);
      });
    },
    async setAside(id, at, isDamaged) {
      await writing([SNAPSHOTS, CHANGES, ASIDE], async (transaction) => {
        const lies = await history(transaction, id);
        if (!isDamaged(lies)) return;
        const bytes = together(lies);
        transaction.objectStore(ASIDE).put({ id, at, bytes });
        transaction.objectStore(SNAPSHOTS).delete(id);
        transaction.objectStore(CHANGES).delete(rangeOf(id));
      });
    },
    async aside(id) {
      const rows = asked(
        (await reading([ASIDE])).objectStore(ASIDE).getAll(rangeOf(id)) as IDBRequest<
          { readonly at: string; readonly bytes: Uint8Array }[]
        >,
      );
      return (await rows).map(({ at, bytes }) => ({ at, bytes }));
    },
    async remove(id, isAsSeen) {
      let removed = false;
      await writing([...JOB_PARTS, SNAPSHOTS, CHANGES, ASIDE], async (transaction) => {
        if (!isAsSeen(await keptIn(transaction, id))) return;
        removed = true;
        knownHere.delete(id);
        for (const name of [JOBS, SNAPSHOTS, UNSAVED]) transaction.objectStore(name).delete(id);
        for (const name of [LOOSE, KNOWN, CHANGES, ASIDE]) transaction.objectStore(name).delete(rangeOf(id));
      });
      return removed;
    },
  };
}
