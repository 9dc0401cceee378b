import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { type Job, kestrelRise } from '@eaveline/job';
import * as sync from '@eaveline/sync';
import { memoryStore, StoreFull } from '@eaveline/sync/store';
import { beforeAll, expect, test } from 'vitest';
import type { PageNews } from '../job/pageChannel.ts';
import { changeKeptJob, takeNewerState } from './changeKept.ts';
import { testServer } from './testing.ts';

const core = createRequire(import.meta.url).resolve('@automerge/automerge/automerge.wasm');
beforeAll(() => sync.startDocuments(readFileSync(core)));

const archived = { at: '2026-05-15T06:00:00Z', by: 'Nia' };
const archive = [{ path: ['archived'], value: archived }];
const back = [{ path: ['archived'], value: undefined }];

function parts(...served: Job[]) {
  const told: PageNews[] = [];
  return {
    store: memoryStore(),
    server: testServer(...served),
    now: () => new Date('2026-05-15T06:00:00Z'),
    documents: async () => sync,
    channel: () => ({ tell: (news: PageNews) => told.push(news), onNews() {}, close() {} }),
    later: () => () => {},
    here: () => ({ who: 'Nia', device: 'phone' }),
    told,
  };
}
const keep = (at: ReturnType<typeof parts>, job: Job) =>
  at.store.add({ id: job.id, job, keptAt: '2026-05-14T06:00:00Z' }, []);
const kept = async (at: ReturnType<typeof parts>) => (await at.store.kept('kestrel-rise'))?.job;

test('archived on the device and the server, as a step of its history, and taken back', async () => {
  const both = parts(kestrelRise);
  await keep(both, kestrelRise);
  expect(await changeKeptJob(kestrelRise, archive, 'Archived.', both)).toEqual({ done: true, words: 'Archived.' });
  expect(await kept(both)).toEqual({ ...kestrelRise, archived });
  expect(both.server.jobs.get('kestrel-rise')?.document).toEqual({ ...kestrelRise, archived });
  const history = sync.openDocument(await both.store.history('kestrel-rise'));
  expect(history.moments().map(({ reason }) => [reason.what, reason.who])).toEqual([
    ['Begun', ''],
    ['Archived.', 'Nia'],
  ]);
  // whoever has it open on another page hears of it
  expect(both.told.at(-1)?.kept.job).toEqual({ ...kestrelRise, archived });

  await changeKeptJob({ ...kestrelRise, archived }, back, 'Back.', both);
  expect(await kept(both)).toEqual(kestrelRise);
  expect(both.server.jobs.get('kestrel-rise')?.document).toEqual(kestrelRise);
});

test('a job of the server alone is kept on this device by being archived', async () => {
  const there = parts(kestrelRise);
  expect((await changeKeptJob(kestrelRise, archive, 'Archived.', there)).done).toBe(true);
  expect(await kept(there)).toEqual({ ...kestrelRise, archived });
});

test('with the server away it is archived here, and it is said', async () => {
  const away = parts(kestrelRise);
  away.server.stopped = true;
  const { done, words } = await changeKeptJob(kestrelRise, archive, 'Archived.', away);
  expect(done).toBe(true);
  expect(words).toBe('Archived. It is on this device. The server does not answer. It goes there when it is opened.');
});

test('what somebody else saved meanwhile is not written over', async () => {
  const theirs = { ...kestrelRise, about: 'theirs' };
  const both = parts(theirs);
  await keep(both, kestrelRise);
  const { words } = await changeKeptJob(kestrelRise, archive, 'Archived.', both);
  expect(words).toContain('Open it to pick one.');
  expect(both.server.jobs.get('kestrel-rise')?.document).toEqual(theirs);
});

test('a device without room, and a change that cannot be: nothing is changed, and it is said', async () => {
  const full = parts(kestrelRise);
  await keep(full, kestrelRise);
  full.store.add = () => Promise.reject(new StoreFull('This device has no more room.'));
  expect(await changeKeptJob(kestrelRise, archive, 'Archived.', full)).toEqual({
    done: false,
    words: 'It could not be kept: This device has no more room.',
  });
  expect(await kept(full)).toEqual(kestrelRise);
  expect(full.server.jobs.get('kestrel-rise')?.document).toEqual(kestrelRise);

  const wrong = await changeKeptJob(kestrelRise, [{ path: ['archived'], value: 'yes' }], 'Archived.', parts());
  expect(wrong.done).toBe(false);
  expect(wrong.words).toContain('it has to be');
});

test('a file taken as the newer state keeps the records of both', async () => {
  const reading = { at: '2026-05-12T09:41:00Z', by: 'Ode', test: 'loop:a', value: 0.6, unit: 'Ω' };
  const here = structuredClone(kestrelRise);
  here.records.readings.one = reading;
  const file = structuredClone(kestrelRise);
  file.about = 'from the file';
  file.records.readings.two = { ...reading, value: 0.5 };
  const both = parts(here);
  await keep(both, here);
  expect((await takeNewerState(here, file, 'Taken.', both)).words).toBe('Taken.');
  const now = (await kept(both)) as Job;
  expect([now.about, Object.keys(now.records.readings).sort()]).toEqual(['from the file', ['one', 'two']]);
});
