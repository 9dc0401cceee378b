import type { TestRow } from '@eaveline/plan';
import { expect, test } from 'vitest';
import { headOfTests } from './headOfTests.ts';
import { lastInstrument, latestReading, type Readings, readingChange } from './reading.ts';
import { standings } from './standing.ts';

const first: Readings[string] = { at: '2026-05-14T23:10:00Z', by: 'Nia', test: 'current:a', value: 8.3, unit: 'A' };
const taken = { test: 'current:a', value: 9.2, unit: 'A', by: 'Ode', with: 'clamp 2', sunWM2: 612, cellC: 41 };

test('a reading is a record more, with who, when, and which instrument', () => {
  const { path, value } = readingChange({}, taken, new Date('2026-05-15T00:52:07.120Z'));
  expect(path).toEqual(['records', 'readings', 'current-a-2026-05-15t00-52-07-120z']);
  expect(value).toEqual({ ...taken, at: '2026-05-15T00:52:07.120Z' });
});

test('read again, the one that counted is named as superseded and nothing of it is touched', () => {
  const { path, value } = readingChange({ one: first }, taken, new Date('2026-05-15T00:52:07.120Z'));
  expect(path.at(-1)).not.toBe('one');
  expect(value).toMatchObject({ supersedes: 'one', value: 9.2 });
});

test('two readings of one millisecond keep ids of their own', () => {
  const at = new Date('2026-05-15T00:52:07.120Z');
  const one = readingChange({}, taken, at);
  const kept = { [one.path[2] as string]: one.value as Readings[string] };
  expect(readingChange(kept, taken, at).path[2]).toBe('current-a-2026-05-15t00-52-07-120z-2');
});

test('of several readings the latest counts, and one that a later one supersedes does not, whatever its time', () => {
  const readings: Readings = {
    one: first,
    two: { ...first, at: '2026-05-14T23:50:00Z' },
    // a clock that ran behind: it says an earlier hour, and still takes the place of `two`
    three: { ...first, at: '2026-05-14T23:20:00Z', supersedes: 'two' },
  };
  expect(latestReading(readings, 'current:a')).toBe('three');
  expect(latestReading(readings, 'current:b')).toBeUndefined();
});

test('the instrument of the last reading of its kind is offered again', () => {
  const rows = [
    { id: 'current:a', instrument: 'clamp' },
    { id: 'current:b', instrument: 'clamp' },
    { id: 'r1r2:a', instrument: 'low-ohm meter' },
  ];
  const readings: Readings = { one: { ...first, with: 'clamp 2' } };
  expect(lastInstrument(readings, rows, 'clamp')).toBe('clamp 2');
  expect(lastInstrument(readings, rows, 'low-ohm meter')).toBe('');
});

const row: TestRow = {
  id: 'current:a',
  group: 'generating',
  sheet: 'generating',
  order: 1,
  name: 'Trunk current',
  point: 'breaker of trunk A',
  instrument: 'clamp',
  conditions: [],
  suspects: [],
  predicted: {
    value: 9.4,
    unit: 'A',
    low: 8.5,
    high: 10.3,
    working: { name: '', value: 9.4, unit: 'A', source: '' },
  },
  limit: { value: 20, unit: 'A', sense: 'at most', clause: '', seen: 'memory' },
};

test('lawful and as designed are two answers: 8.4 of 9.4 A is 11 % low and within 20 A', () => {
  const reading = { value: 8.4, unit: 'A', at: '', by: 'Ode', inLimit: true, nearPrediction: false };
  expect(standings({ ...row, reading })).toEqual([
    { state: 'meets', words: 'Meets the limit, 20\u00a0A.' },
    { state: 'fails', words: 'Fails the drawing, 11\u00a0% low.' },
  ]);
});

test('a look is answered yes or no; without a reading nothing is said', () => {
  const { predicted: _p, limit: _l, ...look } = row;
  expect(standings(look)).toEqual([]);
  const no = { value: 0, unit: 'yes', at: '', by: 'Nia' };
  expect(standings({ ...look, reading: no })).toEqual([{ state: 'fails', words: 'Not as it has to be.' }]);
});

test('the sheet opens with how many are read and how many miss, then the next one and what it should show', () => {
  const tests = (rows: TestRow[]) => ({ tests: { rows, workings: [], leavesOut: [] } });
  expect(headOfTests(tests([row, { ...row, id: 'current:b' }]))).toEqual({
    sentence: 'Two tests. No readings yet.',
    quiet: 'The first is trunk current, breaker of trunk A, expected 9.40\u00a0A.',
  });
  const off = { value: 8.3, unit: 'A', at: '', by: 'Ode', inLimit: true, nearPrediction: false };
  expect(headOfTests(tests([{ ...row, reading: off }]))).toEqual({
    sentence: '1 of 1 tests read. One is not as it has to be.',
    quiet: 'Every test has a reading.',
  });
});
