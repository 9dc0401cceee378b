import { kestrelRise } from '@eaveline/job';
import { type JobStore, type KeptJob, memoryStore } from '@eaveline/sync/store';
import { expect, test } from 'vitest';
import { laidAsideOf, layAside, removeLaidAside, serverCopyOf } from './layAside.ts';
import { testServer } from './testing.ts';

const at = '2026-05-15T06:00:00.000Z';
const now = () => new Date(at);
const NAME = `kestrel-rise.laid-aside.${at}`;
const loose = [
  { id: 'p1', edits: [], reason: { who: '', what: '', device: '', step: 'a', kind: 'edit' as const }, atS: 1 },
];
const damaged: KeptJob = {
  id: 'kestrel-rise',
  job: { name: 'Kestrel Rise', facts: 7 },
  keptAt: '2026-05-03T06:00:00Z',
  loose,
};

async function broken() {
  const store = memoryStore();
  await store.add(damaged, [{ hash: 'b2', bytes: new Uint8Array([3, 4]) }]);
  await store.fold('kestrel-rise', () => new Uint8Array([1, 2]));
  await store.add(damaged, [{ hash: 'a1', bytes: new Uint8Array([5]) }]);
  return store;
}

test('what does not open is kept aside, whole, and its place is free for the server’s', async () => {
  const store = await broken();
  expect(await layAside('kestrel-rise', { store, now })).toMatchObject({ done: true });
  expect(await store.kept('kestrel-rise')).toBeUndefined();
  expect(await store.kept(NAME)).toEqual({ ...damaged, id: NAME });
  // snapshot first, then what was changed on it
  expect((await store.aside(NAME)).map(({ bytes }) => [...bytes])).toEqual([[1, 2, 5]]);
  expect(laidAsideOf(NAME)).toEqual({ id: 'kestrel-rise', at });
  expect(laidAsideOf('kestrel-rise')).toBeUndefined();
});

test('what was laid aside of its history before goes along', async () => {
  const store = await broken();
  await store.setAside('kestrel-rise', '2026-05-04T00:00:00.000Z', () => true);
  await layAside('kestrel-rise', { store, now });
  expect(await store.aside(NAME)).toEqual([{ at: '2026-05-04T00:00:00.000Z', bytes: new Uint8Array([1, 2, 5]) }]);
});

test('where there is no room, or it changed meanwhile, it stays as it is', async () => {
  const full = await broken();
  full.addNew = () => Promise.reject(new Error('This device has no more room.'));
  expect(await layAside('kestrel-rise', { store: full, now })).toEqual({
    done: false,
    words: 'It could not be laid aside: This device has no more room. It is left as it is.',
  });
  expect((await full.kept('kestrel-rise'))?.job).toEqual(damaged.job);

  const changing = await broken();
  const remove = changing.remove.bind(changing);
  changing.remove = async (id, isAsSeen) => {
    await changing.add({ ...damaged, keptAt: '2026-05-15T06:00:01Z' }, []);
    return remove(id, isAsSeen);
  };
  expect(await layAside('kestrel-rise', { store: changing, now })).toMatchObject({ done: false });
  expect((await changing.kept('kestrel-rise'))?.keptAt).toBe('2026-05-15T06:00:01Z');
});

test('a job that opens is never laid aside', async () => {
  const store = memoryStore();
  await store.add({ id: 'kestrel-rise', job: kestrelRise, keptAt: at }, []);
  expect(await layAside('kestrel-rise', { store, now })).toMatchObject({ done: false });
  expect((await store.kept('kestrel-rise'))?.job).toEqual(kestrelRise);
});

test('what the server has of it', async () => {
  const server = testServer(kestrelRise);
  expect(await serverCopyOf('kestrel-rise', server)).toBe('opens');
  expect(await serverCopyOf('larkspur-lane', server)).toBe('none');
  server.jobs.set('kestrel-rise', { document: { id: 'kestrel-rise' }, revision: 2 });
  expect(await serverCopyOf('kestrel-rise', server)).toBe('does not open');
  server.stopped = true;
  expect(await serverCopyOf('kestrel-rise', server)).toBe('away');
});

test('what was laid aside can be removed, history and all; a job that was not cannot be so', async () => {
  const store = await broken();
  expect(await removeLaidAside('kestrel-rise', { store })).toMatchObject({ done: false });
  expect(await store.kept('kestrel-rise')).toEqual(damaged);
  await layAside('kestrel-rise', { store, now });
  expect(await removeLaidAside(NAME, { store })).toMatchObject({ done: true });
  expect(await store.kept(NAME)).toBeUndefined();
  expect(await store.aside(NAME)).toEqual([]);
});

test('a device that refuses to remove it is told of in words', async () => {
  const store = {
    remove: async () => {
      throw new Error('This device has no more room.');
    },
  } as unknown as JobStore;
  expect(await removeLaidAside(NAME, { store })).toEqual({
    done: false,
    words: 'It could not be removed: This device has no more room. It is left as it is.',
  });
});
