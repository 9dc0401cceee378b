import { demoJobs, type Job, kestrelRise } from '@eaveline/job';
import { expect, test } from 'vitest';
import type { Book } from './bookDesk.ts';
import { ARCHIVED, type BookEntry, SHELVES, STATIONS, stopsIt } from './entry.ts';
import { fileStanding } from './fileAnswer.ts';
import { findableOf } from './findable.ts';
import { firmOf } from './firmOf.ts';
import { headOfBook } from './headOfBook.ts';
import { awayWords, keptWords, whereWords } from './keptWords.ts';
import { testSummary } from './testing.ts';
import { readPlace } from './typedPlace.ts';

const archived = { at: '2026-05-15T06:00:00Z', by: 'Nia' };
const answered = { kind: 'answered' } as const;
const noAnswer = { kind: 'away', words: 'The server does not answer.' } as const;

const entry = (job: Job, fails: number, ask: number, where: BookEntry['where'] = 'both'): BookEntry => ({
  job,
  where,
  differs: false,
  findable: findableOf(job),
  notWorkedOut: undefined,
  summary: testSummary(job, fails, ask),
});
const entries = demoJobs.map((job, i) => entry(job, i === 0 ? 2 : 0, i === 1 ? 1 : 0));
const book = (more: Partial<Book> = {}): Book => ({ entries, closed: [], device: answered, server: answered, ...more });

test('every state has one shelf and one station, and what is archived stands on its own shelf alone', () => {
  for (const state of STATIONS) {
    expect(SHELVES.filter(({ holds }) => holds({ state, archived: undefined }))).toHaveLength(1);
    expect(SHELVES.filter(({ holds }) => holds({ state, archived }))).toHaveLength(0);
    expect(ARCHIVED.holds({ state, archived })).toBe(true);
  }
});

test('the Book opens with how many fail and how many wait; archived jobs are not counted', () => {
  expect(headOfBook(book()).sentence).toBe('Five jobs. One fails somewhere, one waits for an answer.');
  expect(headOfBook(book({ entries: [] })).sentence).toBe('The Book is empty.');
  const off = entries.map((each, i) => (i === 0 ? entry({ ...each.job, archived }, 2, 0) : each));
  expect(headOfBook(book({ entries: off })).sentence).toBe('Four jobs. One waits for an answer.');
});

test('while plans are being worked out no count of fails is said, and it does not grow under the eye', () => {
  const waiting = entries.map((each, i) => (i < 2 ? each : { ...each, summary: undefined }));
  expect(headOfBook(book({ entries: waiting })).sentence).toBe('Five jobs. Being worked out: 2 of 5.');
  const stuck = entries.map((each, i) => (i < 4 ? each : { ...each, summary: undefined, notWorkedOut: 'no plane' }));
  expect(headOfBook(book({ entries: stuck })).sentence).toBe(
    'Five jobs. One fails somewhere, one waits for an answer.',
  );
});

test('while every job is for show it is said what to open first; among a firm’s own jobs no more', () => {
  expect(headOfBook(book()).quiet).toMatch(/Open Kestrel Rise first\.$/);
  const [first, ...others] = entries as [BookEntry, ...BookEntry[]];
  const own = [{ ...first, job: { ...first.job, invented: false } }, ...others];
  expect(headOfBook(book({ entries: own })).quiet).toBe('Three stand clear.');
});

test('the firm of the Book is the one most jobs carry', () => {
  expect(firmOf(['your firm', 'Heath', 'Heath'])).toBe('Heath');
  expect(firmOf(['Heath', 'your firm'])).toBe('Heath');
  expect(firmOf([])).toBeUndefined();
});

test('with the server away it is said plainly, and what is shown', () => {
  expect(headOfBook(book({ server: noAnswer })).quiet).toBe(
    'The server does not answer. These are the jobs kept on this device.',
  );
  expect(headOfBook(book({ entries: [], server: noAnswer }))).toEqual({
    sentence: 'Nothing can be shown.',
    quiet: 'The server does not answer. No job is kept on this device.',
  });
  expect(awayWords(book({ device: { kind: 'away', words: 'It is newer.' } }))).toBe(
    'This device does not give its jobs: It is newer. These are the server’s.',
  );
  expect(awayWords(book())).toBeUndefined();
});

test('where a job is kept is said no surer than it is known', () => {
  const here = { where: 'device', differs: false } as const;
  expect(whereWords(here, answered)).toBe('on this device only');
  expect(whereWords(here, noAnswer)).toBe('on this device');
  expect(whereWords({ where: 'both', differs: true }, answered)).toContain('another state');
  const [a, b, c] = demoJobs as [Job, Job, Job];
  const three = [entry(a, 0, 0, 'device'), entry(b, 0, 0, 'server'), entry(c, 0, 0, 'both')];
  expect(keptWords(book({ entries: three }))).toBe(
    'Three jobs: one on this device and the server, one on this device only, one on the server only',
  );
  expect(keptWords(book())).toBe('Five jobs, on this device and the server');
});

test('a job that is not worked out yet does not claim that nothing stops it', () => {
  expect(stopsIt({ summary: undefined, notWorkedOut: undefined })).toBe('Being worked out.');
  expect(stopsIt({ summary: undefined, notWorkedOut: 'no plane' })).toBe('Not worked out: no plane');
});

test('a file is new, the same, or another state, and it is said what its taking would lose', () => {
  const nobody = () => false;
  expect(fileStanding(kestrelRise, undefined, nobody)).toEqual({ kind: 'new' });
  expect(fileStanding(structuredClone(kestrelRise), kestrelRise, () => true)).toEqual({ kind: 'same' });
  const here = structuredClone(kestrelRise);
  here.records.serials.one = { at: archived.at, by: 'Nia', of: 'a', serial: '1' };
  const standing = fileStanding(kestrelRise, here, () => true);
  expect(standing).toMatchObject({
    kind: 'other state',
    words:
      'Kestrel Rise is here already. They differ in records. The file has no records, the job here one record. One of those here is not in the file, and stays either way.',
  });
  expect(fileStanding(kestrelRise, undefined, () => true).kind).toBe('closed');
});

test('a place is two figures on the globe, and each that is not says what it has to be', () => {
  expect(readPlace({ latitude: '−37.6', longitude: '143.9' })).toEqual({ latitudeDeg: -37.6, longitudeDeg: 143.9 });
  const wrong = readPlace({ latitude: '376', longitude: 'east' });
  expect(wrong).toEqual({
    latitude: '376° is off the globe. It lies between −90 and 90.',
    longitude: 'east is no number. Type degrees with a point: −37.62.',
  });
});
