import 'fake-indexeddb/auto';
import { IDBFactory, IDBObjectStore, IDBTransaction } from 'fake-indexeddb';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { browserStore } from './browserStore.ts';
import { type JobStore, type KeptJob, StoreFull, StoreNewer } from './jobStore.ts';
import { memoryStore } from './memoryStore.ts';

const kept = (id: string, keptAt = '2026-05-15T06:00:00Z'): KeptJob => ({ id, job: { id, n: 1 }, keptAt });
const change = (hash: string) => ({ hash, bytes: new Uint8Array([hash.charCodeAt(0)]) });

beforeEach(() => {
  globalThis.indexedDB = new IDBFactory(); // each example with a clean device
});
afterEach(() => vi.restoreAllMocks());

describe.each<[string, () => JobStore]>([
  ['in memory', memoryStore],
  ['in the browser', () => browserStore({ page: 'one' })],
])('a store %s', (_, make) => {
  test('keeps a job and its changes together, and lists it without them', async () => {
    const store = make();
    await store.add(kept('b'), [change('x'), change('y')]);
    await store.add(kept('a'), []);
    expect((await store.list()).map(({ id }) => id)).toEqual(['a', 'b']);
    expect(await store.kept('b')).toEqual(kept('b'));
    const { snapshot, changes } = await store.history('b');
    expect(snapshot).toBeUndefined();
    expect(changes.map(({ hash }) => hash).sort()).toEqual(['x', 'y']);
  });

  test('a job that is not there is undefined, its history empty', async () => {
    const store = make();
    expect(await store.kept('nobody')).toBeUndefined();
    expect(await store.history('nobody')).toEqual({ snapshot: undefined, changes: [] });
  });

  test('a job’s changes are never another’s, whatever the two are called', async () => {
    const store = make();
    for (const id of ['a', 'a-b', 'ab', 'b']) await store.add(kept(id), [change(`h-${id}`)]);
    expect((await store.history('a')).changes.map(({ hash }) => hash)).toEqual(['h-a']);
    await store.remove('a', () => true);
    expect((await store.history('a-b')).changes.map(({ hash }) => hash)).toEqual(['h-a-b']);
  });

  test('folding puts the snapshot in the place of everything it was made of', async () => {
    const store = make();
    await store.add(kept('a'), [change('x'), change('y')]);
    await store.fold('a', ({ changes }) => new Uint8Array([changes.length]));
    await store.add(kept('a'), [change('z')]);
    const { snapshot, changes } = await store.history('a');
    expect(snapshot).toEqual(new Uint8Array([2]));
    expect(changes.map(({ hash }) => hash)).toEqual(['z']);
  });

  test('folding that falls over leaves all as it was', async () => {
    const store = make();
    await store.add(kept('a'), [change('x')]);
    const fold = store.fold('a', () => {
      throw new Error('does not read');
    });
    await expect(fold).rejects.toThrow('does not read');
    expect((await store.history('a')).changes).toHaveLength(1);
  });

  test('a history laid aside is there whole to be saved, and the job stands without one', async () => {
    const store = make();
    await store.add(kept('a'), [change('x'), change('y')]);
    await store.setAside('a', '2026-05-15T07:00:00Z', () => true);
    expect((await store.history('a')).changes).toEqual([]);
    expect(await store.kept('a')).toEqual(kept('a'));
    const [laid] = await store.aside('a');
    expect(laid?.at).toBe('2026-05-15T07:00:00Z');
    expect([...(laid?.bytes ?? [])].sort()).toEqual([120, 121]);
  });

  test('a sound history that another page began meanwhile is not laid aside', async () => {
    const store = make();
    await store.add(kept('a'), [change('x')]);
    await store.setAside('a', '2026-05-15T07:00:00Z', ({ changes }) => changes.some(({ hash }) => hash === 'damaged'));
    expect((await store.history('a')).changes).toHaveLength(1);
    expect(await store.aside('a')).toEqual([]);
  });

  test('a new job never goes over one that is there, and whoever is first begins the history', async () => {
    const store = make();
    const later = { ...kept('a'), job: { id: 'a', n: 2 } };
    expect(await store.addNew(kept('a'))).toEqual(kept('a'));
    expect(await store.addNew(later)).toEqual(kept('a'));
    expect(await store.kept('a')).toEqual(kept('a'));
    expect((await store.begin('a', [change('x')])).changes.map(({ hash }) => hash)).toEqual(['x']);
    expect((await store.begin('a', [change('y')])).changes.map(({ hash }) => hash)).toEqual(['x']);
    expect((await store.history('a')).changes.map(({ hash }) => hash)).toEqual(['x']);
  });

  test('a page that knows less of the server does not take back what another page knows', async () => {
    const store = make();
    const mark = (revision: string, count: number) => ({ revision, heads: ['x'], at: '2026-05-15T06:00:00Z', count });
    await store.add({ ...kept('a'), server: mark('"2"', 2) }, []);
    await store.add({ ...kept('a'), server: mark('"1"', 1) }, [change('y')]);
    expect((await store.kept('a'))?.server).toEqual(mark('"2"', 2));
    await store.add(kept('a'), [change('z')]);
    expect((await store.kept('a'))?.server).toEqual(mark('"2"', 2));
    await store.add({ ...kept('a'), server: mark('"3"', 3) }, []);
    expect((await store.kept('a'))?.server?.revision).toBe('"3"');
  });

  test('a job is removed only as it was seen', async () => {
    const store = make();
    await store.add(kept('a'), [change('x')]);
    expect(await store.remove('a', (there) => there?.keptAt === 'another time')).toBe(false);
    expect(await store.kept('a')).toEqual(kept('a'));
    expect((await store.history('a')).changes).toHaveLength(1);
    expect(await store.remove('a', (there) => there?.keptAt === kept('a').keptAt)).toBe(true);
    expect(await store.kept('a')).toBeUndefined();
  });
});

describe('the browser’s own database', () => {
  test('two pages add to one job and neither writes over the other', async () => {
    const [one, two] = [browserStore({ page: 'one' }), browserStore({ page: 'two' })];
    await Promise.all([one.add(kept('a'), [change('x')]), two.add(kept('a'), [change('y')])]);
    expect((await one.history('a')).changes.map(({ hash }) => hash).sort()).toEqual(['x', 'y']);
  });

  test('what pages know of the server, and what waits in each for the history, lies there beside each other', async () => {
    const [one, two] = [browserStore({ page: 'one' }), browserStore({ page: 'two' })];
    const mark = (count: number) => ({ revision: `"${count}"`, heads: ['x'], at: '2026-05-15T06:00:00Z', count });
    const reason = { who: 'Nia', what: 'Roof pitch', device: 'phone', step: 's', kind: 'edit' as const };
    const loose = (id: string, atS: number) => ({ id, edits: [], reason, atS });
    await one.add({ ...kept('a'), server: mark(2), loose: [loose('one 0', 5), loose('one 1', 5)] }, []);
    await two.add({ ...kept('a'), server: mark(1), loose: [loose('two 0', 4)] }, []);
    const there = await one.kept('a');
    expect(there?.server).toEqual(mark(2));
    expect(there?.loose?.map(({ id }) => id)).toEqual(['two 0', 'one 0', 'one 1']);
    await two.add({ ...kept('a'), server: mark(3) }, [change('x')], ['one 0', 'two 0']);
    await two.fold('a', () => new Uint8Array([1]));
    expect((await one.list()).map(({ server, loose }) => [server, loose?.map(({ id }) => id)])).toEqual([
      [mark(3), ['one 1']],
    ]);
  });

  test('what is added is on its way before the page can go: nothing is read first, and no answer waited for', async () => {
    const store = browserStore({ page: 'one' });
    await store.add(kept('a'), [change('x')]);
    const asked = vi.spyOn(IDBObjectStore.prototype, 'get');
    const askedAll = vi.spyOn(IDBObjectStore.prototype, 'getAll');
    const ended = vi.spyOn(IDBTransaction.prototype, 'commit');
    const added = store.add(kept('a', '2026-05-15T07:00:00Z'), [change('y')]);
    for (let turn = 0; turn < 3; turn += 1) await Promise.resolve(); // no task of the browser's has run by then
    expect([asked.mock.calls.length, askedAll.mock.calls.length, ended.mock.calls.length]).toEqual([0, 0, 1]);
    await added;
    expect((await store.kept('a'))?.keptAt).toBe('2026-05-15T07:00:00Z');
  });

  test('what version 2 kept in one row is read as it was, and the next page goes on from it', async () => {
    const server = { revision: '"2"', heads: ['x'], at: '2026-05-15T06:00:00Z', count: 2 };
    await new Promise<void>((resolve, reject) => {
      const request = indexedDB.open('eaveline', 2);
      request.onupgradeneeded = () => {
        const database = request.result;
        for (const name of ['unsaved', 'snapshots']) database.createObjectStore(name, { keyPath: 'id' });
        database.createObjectStore('jobs', { keyPath: 'id' }).put({ ...kept('a'), heads: ['x'], server });
        database.createObjectStore('changes', { keyPath: ['id', 'hash'] }).put({ id: 'a', ...change('x') });
        database.createObjectStore('aside', { keyPath: ['id', 'at'] });
      };
      request.onsuccess = () => {
        request.result.close();
        resolve();
      };
      request.onerror = () => reject(request.error);
    });
    const store = browserStore({ page: 'one' });
    expect(await store.list()).toEqual([{ ...kept('a'), heads: ['x'], server }]);
    await store.add({ ...kept('a'), heads: ['y'] }, [change('y')]);
    expect((await store.kept('a'))?.server).toEqual(server);
    expect((await store.history('a')).changes).toHaveLength(2);
  });

  test('no room: it is said so, and neither the job nor the change is there', async () => {
    const store = browserStore({ page: 'one' });
    await store.add(kept('a'), [change('x')]);
    vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(function (this: IDBObjectStore, value) {
      if ((value as { hash?: string }).hash === 'y') throw new DOMException('full', 'QuotaExceededError');
      return this.add(value);
    });
    await expect(store.add(kept('b'), [change('y')])).rejects.toBeInstanceOf(StoreFull);
    expect(await store.kept('b')).toBeUndefined();
  });

  test('a database of a newer Eaveline is not touched', async () => {
    await new Promise<void>((resolve, reject) => {
      const request = indexedDB.open('eaveline', 99);
      request.onsuccess = () => {
        request.result.close();
        resolve();
      };
      request.onerror = () => reject(request.error);
    });
    await expect(browserStore({ page: 'one' }).list()).rejects.toBeInstanceOf(StoreNewer);
  });

  test('when a newer Eaveline opens it in another tab, this one lets go and says so', async () => {
    const onNewer = vi.fn();
    await browserStore({ page: 'one', onNewer }).add(kept('a'), []);
    const request = indexedDB.open('eaveline', 99);
    await new Promise((resolve) => {
      request.onsuccess = resolve;
    });
    request.result.close();
    expect(onNewer).toHaveBeenCalledOnce();
  });

  test('what an earlier version kept for the server is a job of this device', async () => {
    await new Promise<void>((resolve, reject) => {
      const request = indexedDB.open('eaveline', 1);
      request.onupgradeneeded = () => {
        const store = request.result.createObjectStore('unsaved', { keyPath: 'id' });
        store.put({ id: 'a', document: { id: 'a' }, revision: '"1"', since: '2026-05-15T06:00:00Z' });
      };
      request.onsuccess = () => {
        request.result.close();
        resolve();
      };
      request.onerror = () => reject(request.error);
    });
    const store = browserStore({ page: 'one' });
    expect(await store.kept('a')).toEqual({ id: 'a', job: { id: 'a' }, keptAt: '2026-05-15T06:00:00Z' });
    expect((await store.list()).map(({ id }) => id)).toEqual(['a']);
    await store.add(kept('a'), [change('x')]);
    expect(await store.list()).toEqual([kept('a')]);
  });
});
