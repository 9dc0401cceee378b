import { demoJobs, type Job } from '@eaveline/job';
import { expect, test } from 'vitest';
import { type BookEntry, found, SHELVES, STATIONS, stopsIt } from './entry.ts';
import { headOfBook } from './headOfBook.ts';

const entry = (job: Job, fails: number, ask: number): BookEntry => ({
  job,
  notWorkedOut: undefined,
  summary: { jobId: job.id, modules: 1, days: 1, tally: { fails, ask, meets: 3, unconfirmed: 0 } },
});
const entries = demoJobs.map((job, i) => entry(job, i === 0 ? 2 : 0, i === 1 ? 1 : 0));

test('a job is found by address, customer, equipment and state, all words together', () => {
  expect(found(entries, '9 kestrel rise').map(({ job }) => job.id)).toEqual(['kestrel-rise']);
  expect(found(entries, 'kestrel heath').map(({ job }) => job.id)).toEqual(['kestrel-rise']);
  expect(found(entries, 'kestrel clinic')).toEqual([]);
  expect(found(entries, '')).toHaveLength(demoJobs.length);
});

test('every state has one shelf and one station', () => {
  const shelved = SHELVES.flatMap(({ states }) => states);
  expect([...shelved].sort()).toEqual([...STATIONS].sort());
});

test('the Book opens with how many fail and how many wait', () => {
  expect(headOfBook(entries).sentence).toBe('Five jobs. One fails somewhere, one waits for an answer.');
  expect(headOfBook([]).sentence).toBe('The Book is empty.');
});

test('a job that is not worked out yet does not claim that nothing stops it', () => {
  const [first] = demoJobs;
  if (first === undefined) throw new Error('there are demo jobs');
  expect(stopsIt({ job: first, summary: undefined, notWorkedOut: undefined })).toBe('Being worked out.');
});
