import { type JobStore, type KeptJob, putOver, type StoredChange, StoreFull, StoreNewer } from './jobStore.ts';
import { together } from './together.ts';

const DATABASE = 'eaveline';
/** 1 kept whole documents that waited for the server, in `unsaved`. 2 keeps histories. */
const VERSION = 2;
const JOBS = 'jobs';
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

export interface BrowserStoreParts {
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

function upgrade(database: IDBDatabase, from: number): void {
  if (from < 1) database.createObjectStore(UNSAVED, { keyPath: 'id' });
  if (from < 2) {
    database.createObjectStore(JOBS, { keyPath: 'id' });
    database.createObjectStore(CHANGES, { keyPath: ['id', 'hash'] });
    database.createObjectStore(SNAPSHOTS, { keyPath: 'id' });
    database.createObjectStore(ASIDE, { keyPath: ['id', 'at'] });
  }
}

/** Jobs in the browser's own database; they outlive the tab, the server and the computer's night. */
export function browserStore({ onNewer, onHeld, onOpen }: BrowserStoreParts = {}): JobStore {
  let opened: Promise<IDBDatabase> | undefined;

  function open(): Promise<IDBDatabase> {
    if (opened !== undefined) return opened;
    opened = new Promise<IDBDatabase>((resolve, reject) => {
      const request = indexedDB.open(DATABASE, VERSION);
      request.onupgradeneeded = ({ oldVersion }) => upgrade(request.result, oldVersion);
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
    const [kept, waited] = await Promise.all([
      asked(transaction.objectStore(JOBS).get(id) as IDBRequest<KeptJob | undefined>),
      asked(transaction.objectStore(UNSAVED).get(id) as IDBRequest<WaitedRow | undefined>),
    ]);
    return kept ?? (waited === undefined ? undefined : asKept(waited));
  }

  return {
    async list() {
      const transaction = await reading([JOBS, UNSAVED]);
      const [kept, waited] = await Promise.all([
        asked(transaction.objectStore(JOBS).getAll() as IDBRequest<KeptJob[]>),
        asked(transaction.objectStore(UNSAVED).getAll() as IDBRequest<WaitedRow[]>),
      ]);
      const known = new Set(kept.map(({ id }) => id));
      return [...kept, ...waited.filter(({ id }) => !known.has(id)).map(asKept)];
    },
    async kept(id) {
      return keptIn(await reading([JOBS, UNSAVED]), id);
    },
    async history(id) {
      return history(await reading([SNAPSHOTS, CHANGES]), id);
    },
    async addNew(kept) {
      let there = kept;
      await writing([JOBS, UNSAVED], async (transaction) => {
        const before = await keptIn(transaction, kept.id);
        if (before === undefined) transaction.objectStore(JOBS).put(kept);
        else there = before;
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
      await writing([JOBS, CHANGES, UNSAVED], async (transaction) => {
        const before = await keptIn(transaction, kept.id);
        transaction.objectStore(JOBS).put(putOver(before, kept, taken));
        for (const change of changes) transaction.objectStore(CHANGES).put({ id: kept.id, ...change });
        transaction.objectStore(UNSAVED).delete(kept.id);
      });
    },
    async fold(id, snapshotOf) {
      await writing([SNAPSHOTS, CHANGES], async (transaction) => {
        const bytes = snapshotOf(await history(transaction, id));
        transaction.objectStore(SNAPSHOTS).put({ id, bytes });
        transaction.objectStore(CHANGES).delete(rangeOf(id));
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
      await writing([JOBS, SNAPSHOTS, CHANGES, ASIDE, UNSAVED], async (transaction) => {
        if (!isAsSeen(await keptIn(transaction, id))) return;
        removed = true;
        for (const name of [JOBS, SNAPSHOTS, UNSAVED]) transaction.objectStore(name).delete(id);
        for (const name of [CHANGES, ASIDE]) transaction.objectStore(name).delete(rangeOf(id));
      });
      return removed;
    },
  };
}
