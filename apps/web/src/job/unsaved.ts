/** A document with edits the server has not acknowledged. */
export interface Unsaved {
  readonly id: string;
  readonly document: unknown;
  /** Revision the edits were made on, as the server's ETag names it. */
  readonly revision: string | undefined;
  readonly since: string;
}

/** Where edits wait for the server. Every call settles when it is truly kept. */
export interface UnsavedStore {
  get(id: string): Promise<Unsaved | undefined>;
  put(unsaved: Unsaved): Promise<void>;
  remove(id: string): Promise<void>;
}

/** Edits in memory: for tests, and where a browser keeps nothing. */
export function memoryUnsaved(): UnsavedStore {
  const kept = new Map<string, Unsaved>();
  return {
    async get(id) {
      return kept.get(id);
    },
    async put(unsaved) {
      kept.set(unsaved.id, unsaved);
    },
    async remove(id) {
      kept.delete(id);
    },
  };
}

const DATABASE = 'eaveline';
const STORE = 'unsaved';

function settled<T>(request: IDBRequest<T>): Promise<T> {
  return new Promise((resolve, reject) => {
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error ?? new Error('The browser kept nothing and did not say why'));
  });
}

/** Edits in the browser's own database; they outlive the tab and the computer's night. */
export function browserUnsaved(): UnsavedStore {
  let opened: Promise<IDBDatabase> | undefined;
  const open = () => {
    if (opened !== undefined) return opened;
    const request = indexedDB.open(DATABASE, 1);
    request.onupgradeneeded = () => request.result.createObjectStore(STORE, { keyPath: 'id' });
    opened = settled(request);
    opened.catch(() => {
      opened = undefined; // next time may go better
    });
    return opened;
  };
  const store = async (mode: IDBTransactionMode) => (await open()).transaction(STORE, mode).objectStore(STORE);
  return {
    async get(id) {
      return settled((await store('readonly')).get(id) as IDBRequest<Unsaved | undefined>);
    },
    async put(unsaved) {
      const kept = await store('readwrite');
      const whole = new Promise<void>((resolve, reject) => {
        kept.transaction.oncomplete = () => resolve();
        kept.transaction.onabort = () => reject(kept.transaction.error ?? new Error('The browser gave up keeping it'));
      });
      kept.put(unsaved);
      await whole;
    },
    async remove(id) {
      await settled((await store('readwrite')).delete(id));
    },
  };
}
