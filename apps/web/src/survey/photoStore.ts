/** A photograph as it lies on this device. */
export interface KeptPhoto {
  readonly id: string;
  readonly jobId: string;
  /** Path below `facts` it was taken for. */
  readonly of: string;
  readonly what: string;
  readonly by: string;
  readonly at: string;
  readonly picture: Blob;
}

/** Where photographs lie until they can go further. Every call settles when it is truly kept. */
export interface PhotoStore {
  keep(photo: KeptPhoto): Promise<void>;
  get(id: string): Promise<KeptPhoto | undefined>;
  ofJob(jobId: string): Promise<readonly KeptPhoto[]>;
}

/** Thrown where this device does not keep a photograph; its message is for whoever holds the phone. */
export class NotKept extends Error {
  override readonly name = 'NotKept';
}

const DATABASE = 'eaveline-photos';
const STORE = 'photos';

function settled<T>(request: IDBRequest<T>): Promise<T> {
  return new Promise((resolve, reject) => {
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(notKept(request.error));
  });
}

function notKept(error: DOMException | null): NotKept {
  if (error?.name === 'QuotaExceededError')
    return new NotKept('This phone is full: the photograph was not kept. Make room, then take it again.');
  return new NotKept(`This browser did not keep the photograph: ${error?.message ?? 'it does not say why'}.`);
}

/** Photographs in the browser's own database; no server is asked. */
function browserPhotos(): PhotoStore {
  let opened: Promise<IDBDatabase> | undefined;
  const open = () => {
    if (opened !== undefined) return opened;
    const request = indexedDB.open(DATABASE, 1);
    request.onupgradeneeded = () => {
      request.result.createObjectStore(STORE, { keyPath: 'id' }).createIndex('job', 'jobId');
    };
    opened = settled(request);
    opened.catch(() => {
      opened = undefined; // next time may go better
    });
    return opened;
  };
  const store = async (mode: IDBTransactionMode) => (await open()).transaction(STORE, mode).objectStore(STORE);
  return {
    async keep(photo) {
      const kept = await store('readwrite');
      const whole = new Promise<void>((resolve, reject) => {
        kept.transaction.oncomplete = () => resolve();
        kept.transaction.onabort = () => reject(notKept(kept.transaction.error));
      });
      kept.put(photo);
      await whole;
    },
    async get(id) {
      return settled((await store('readonly')).get(id) as IDBRequest<KeptPhoto | undefined>);
    },
    async ofJob(jobId) {
      return settled((await store('readonly')).index('job').getAll(jobId) as IDBRequest<KeptPhoto[]>);
    },
  };
}

export const photos: PhotoStore = browserPhotos();
