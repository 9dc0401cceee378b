import { type Job, kestrelRise, larkspurLane } from '@eaveline/job';
import { memoryStore, StoreFull } from '@eaveline/sync/store';
import { expect, test } from 'vitest';
import { keepNewJob, keepOnDevice, removeFromDevice, sendToServer } from './keepJob.ts';
import { testServer } from './testing.ts';

const parts = (...served: Job[]) => ({
  store: memoryStore(),
  server: testServer(...served),
  now: () => new Date('2026-05-15T06:00:00Z'),
});

test('a new job is on the device before the server is asked; with the server away it is kept all the same', async () => {
  const away = parts();
  away.server.stopped = true;
  expect(await keepNewJob(kestrelRise, away)).toEqual({
    done: true,
    words:
      'Kestrel Rise is kept on this device. The server does not answer. It goes there when it is opened while the server answers.',
  });
  expect((await away.store.kept('kestrel-rise'))?.job).toEqual(kestrelRise);

  const both = parts();
  expect((await keepNewJob(kestrelRise, both)).words).toBe(
    'Kestrel Rise is kept on this device. The server has it too.',
  );
  expect(both.server.jobs.get('kestrel-rise')?.document).toEqual(kestrelRise);
});

test('a device without room keeps nothing, says so, and the server is not given what the device has not', async () => {
  const full = parts();
  full.store.addNew = () => Promise.reject(new StoreFull('This device has no more room.'));
  const { done, words } = await keepNewJob(kestrelRise, full);
  expect(done).toBe(false);
  expect(words).toContain('This device has no more room. Save its file.');
  expect(full.server.jobs.size).toBe(0);
});

test('no job is written over another of the same id, here or on the server', async () => {
  const mine = { ...kestrelRise, name: 'Mine' };
  const there = parts(kestrelRise);
  expect((await keepNewJob(mine, there)).words).toContain('The server has another job of this id, and keeps it.');
  expect(there.server.jobs.get('kestrel-rise')?.document).toEqual(kestrelRise);
  expect((await keepNewJob(kestrelRise, there)).done).toBe(false);
  expect((await there.store.kept('kestrel-rise'))?.job).toEqual(mine);
});

test('a job goes off the device only where the server holds the same state of it', async () => {
  const same = parts(kestrelRise);
  await keepOnDevice(kestrelRise, same);
  expect(await removeFromDevice('kestrel-rise', same)).toMatchObject({ done: true });
  expect(await same.store.kept('kestrel-rise')).toBeUndefined();

  for (const [what, server] of [
    ['another state', testServer({ ...kestrelRise, about: 'older' })],
    ['no such job', testServer()],
    ['away', Object.assign(testServer(kestrelRise), { stopped: true })],
  ] as const) {
    const here = { ...parts(), server };
    await keepOnDevice(kestrelRise, here);
    const { done, words } = await removeFromDevice('kestrel-rise', here);
    expect([what, done, words.endsWith('It stays on this device.')]).toEqual([what, false, true]);
    expect((await here.store.kept('kestrel-rise'))?.job).toEqual(kestrelRise);
  }
});

test('a job only here can be sent; sent twice it is the same job', async () => {
  const here = parts();
  expect((await sendToServer(larkspurLane, here)).words).toBe('The server has it too.');
  expect((await sendToServer(larkspurLane, here)).words).toBe('The server has it.');
});
