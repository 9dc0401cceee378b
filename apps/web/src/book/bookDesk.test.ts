import { type Job, kestrelRise, larkspurLane, quaysideTerrace } from '@eaveline/job';
import { type KeptJob, memoryStore } from '@eaveline/sync/store';
import { expect, test, vi } from 'vitest';
import { type BookParts, makeBookDesk } from './bookDesk.ts';
import { testServer, testSummary } from './testing.ts';

const keptAt = '2026-05-03T06:00:00Z';
const keep = (job: Job, more: Partial<KeptJob> = {}): KeptJob => ({ id: job.id, job, keptAt, ...more });
const agreedAt = (at: string) => ({ revision: '"1"', heads: [], at });

function begin(parts: Partial<BookParts> = {}) {
  let ms = 0;
  const whole: BookParts = {
    store: memoryStore(),
    server: testServer(),
    desk: { sumUp: async (job) => testSummary(job) },
    breathe: async () => {},
    later: (call) => queueMicrotask(call),
    clockMs: () => (ms += 1000),
    summaries: new Map(),
    ...parts,
  };
  const book = makeBookDesk(whole);
  return { book, where: () => book.state().entries.map(({ job, where }) => `${job.id}: ${where}`), ...whole };
}

test('what is on the device is shown before the server answers, and the server’s others join', async () => {
  const store = memoryStore();
  await store.add(keep(larkspurLane), []);
  const server = testServer(kestrelRise, larkspurLane);
  let answer = () => {};
  const asked = new Promise<void>((resolve) => {
    answer = resolve;
  });
  const list = server.list.bind(server);
  server.list = async () => {
    await asked;
    return list();
  };
  const { book, where } = begin({ store, server });
  const opened = book.open();
  await vi.waitFor(() => expect(book.state().device.kind).toBe('answered'));
  expect(where()).toEqual(['larkspur-lane: device']);
  expect(book.state().server.kind).toBe('asking');
  answer();
  await opened;
  expect(where()).toEqual(['kestrel-rise: server', 'larkspur-lane: both']);
});

test('with the server away the device’s jobs stand, and it is said', async () => {
  const store = memoryStore();
  await store.add(keep(larkspurLane), []);
  const server = testServer(kestrelRise);
  const { book, where } = begin({ store, server });
  await book.open();
  server.stopped = true;
  await book.open();
  expect(book.state().server).toEqual({ kind: 'away', words: 'The server does not answer.' });
  // what was fetched while it answered is still known
  expect(where()).toEqual(['kestrel-rise: server', 'larkspur-lane: device']);
  server.stopped = false;
  await book.open();
  expect(book.state().server.kind).toBe('answered');
});

test('a device that cannot be read is said, and the server’s jobs stand', async () => {
  const store = { ...memoryStore(), list: () => Promise.reject(new Error('A newer Eaveline has kept jobs here.')) };
  const { book, where } = begin({ store, server: testServer(kestrelRise) });
  await book.open();
  expect(book.state().device).toEqual({ kind: 'away', words: 'A newer Eaveline has kept jobs here.' });
  expect(where()).toEqual(['kestrel-rise: server']);
});

test('a job that does not open here is shown by the server’s copy, however long ago both agreed', async () => {
  const store = memoryStore();
  const server = { revision: '"1"', heads: [], at: '2027-01-01T00:00:00Z' };
  await store.add({ id: 'kestrel-rise', job: { facts: 7 }, keptAt, server }, []);
  const { book, where } = begin({ store, server: testServer(kestrelRise) });
  await book.open();
  expect(where()).toEqual(['kestrel-rise: both']);
  expect(book.state().closed).toMatchObject([{ id: 'kestrel-rise', where: 'device', otherCopyOpens: true }]);
});

test('a job both have is fetched only where the server may have another state of it', async () => {
  const store = memoryStore();
  await store.add(keep(kestrelRise, { server: agreedAt('2026-05-02T00:00:00Z') }), []);
  await store.add(keep(larkspurLane, { server: agreedAt('2026-04-02T00:00:00Z') }), []);
  const server = testServer(kestrelRise, { ...larkspurLane, about: 'changed at the desk' });
  const { book } = begin({ store, server });
  await book.open();
  expect(server.fetched).toEqual(['larkspur-lane']);
  expect(book.state().entries.map(({ job, differs }) => [job.id, differs])).toEqual([
    ['kestrel-rise', false],
    ['larkspur-lane', true],
  ]);
  // the device’s own is shown: it may hold edits the server has not
  expect(book.state().entries[1]?.job.about).toBe(larkspurLane.about);
});

test('what does not open is a closed row with its words, kept as it is; another copy that opens is shown', async () => {
  const store = memoryStore();
  const newer = { ...kestrelRise, version: 9 };
  await store.add({ id: 'kestrel-rise', job: newer, keptAt }, []);
  await store.add({ id: 'lost', job: undefined, keptAt }, []);
  await store.add({ id: 'round', job: { name: 'Round', big: 10n }, keptAt }, []);
  await store.add({ id: 'other', job: quaysideTerrace, keptAt }, []);
  const { book, where } = begin({ store, server: testServer(kestrelRise) });
  await book.open();
  expect(where()).toEqual(['kestrel-rise: both']);
  const closed = new Map(book.state().closed.map((each) => [each.id, each]));
  expect(closed.get('kestrel-rise')).toMatchObject({ document: newer, otherCopyOpens: true, where: 'device' });
  expect(closed.get('kestrel-rise')?.words[0]).toContain('Open it with a newer Eaveline');
  expect(closed.get('lost')?.words[0]).toContain('an empty file');
  expect(closed.get('round')).toMatchObject({ name: 'Round', words: [expect.stringContaining('BigInt')] });
  expect(closed.get('other')?.words).toEqual(['It is kept as other and calls itself quayside-terrace.']);
});

test('plans are summed one after another, the ones looked at first; a state summed before is not summed again', async () => {
  const asked: string[] = [];
  const sumUp = async (job: Job) => {
    asked.push(job.id);
    if (job.id === 'larkspur-lane') throw new Error('no plane');
    return testSummary(job);
  };
  const store = memoryStore();
  for (const job of [kestrelRise, larkspurLane, quaysideTerrace]) await store.add(keep(job), []);
  const one = begin({ store, desk: { sumUp } });
  one.book.wants(['quayside-terrace']);
  await one.book.open();
  await vi.waitFor(() => expect(asked).toHaveLength(3));
  // the first was begun as soon as it was read; then comes what is looked at
  expect(asked.slice(0, 2)).toEqual(['kestrel-rise', 'quayside-terrace']);
  await vi.waitFor(() => expect(one.book.state().entries[1]?.notWorkedOut).toBe('no plane'));

  const two = begin({ store, desk: { sumUp }, summaries: one.summaries });
  await two.book.open();
  await vi.waitFor(() => expect(asked).toEqual([...asked.slice(0, 3), 'larkspur-lane']));
  expect(two.book.state().entries[0]?.summary?.jobId).toBe('kestrel-rise');
});

test('after an act one job is read anew', async () => {
  const store = memoryStore();
  const server = testServer(kestrelRise);
  const { book, where } = begin({ store, server });
  await book.open();
  await store.add(keep({ ...kestrelRise, name: 'Aviary' }), []);
  await book.again('kestrel-rise');
  await vi.waitFor(() => expect(where()).toEqual(['kestrel-rise: both']));
  expect(book.state().entries[0]).toMatchObject({ differs: true, job: { name: 'Aviary' } });
  await store.remove('kestrel-rise', () => true);
  server.jobs.clear();
  await book.open();
  expect(where()).toEqual([]);
});
