import { expect, test } from 'vitest';
import type { Finding } from '../finding.ts';
import { eachOrAll } from './eachOrAll.ts';
import { failingOrNearest } from './failingOrNearest.ts';
import { unconfirmedOf } from './leftOut.ts';
import type { Judged } from './rule.ts';
import { sortFindings } from './sortFindings.ts';

const plain: Finding = {
  rule: 'r',
  id: 'r:x',
  about: { kind: 'job', id: 'x', name: 'x' },
  title: 't',
  state: 'meets',
  unconfirmed: false,
  clause: 'c',
  edition: 'e',
  seen: 'public text',
  mends: [],
  needs: [],
  sheet: '08',
  stops: false,
};
const of = (id: string, more: Partial<Finding>): Finding => ({ ...plain, id, ...more });

test('what stops first, then other fails, what is asked, unconfirmed, the rest by nearness, those without figure last', () => {
  const meets = { state: 'meets' as const, limit: 100 };
  const sorted = sortFindings([
    of('word', { state: 'meets' }),
    of('far', { ...meets, margin: 60 }),
    of('unconfirmed', { ...meets, margin: 99, unconfirmed: true }),
    of('asks', { state: 'ask' }),
    of('fails', { state: 'fails', margin: -80, limit: 100 }),
    of('near', { ...meets, margin: 2 }),
    of('asks and stops', { state: 'ask', stops: true }),
    of('a little over', { state: 'fails', stops: true, margin: -1, limit: 100 }),
    of('far over', { state: 'fails', stops: true, margin: -50, limit: 100 }),
  ]);
  expect(sorted.map(({ id }) => id)).toEqual([
    'far over',
    'a little over',
    'fails',
    'asks and stops',
    'asks',
    'unconfirmed',
    'near',
    'far',
    'word',
  ]);
});

test('nearness is a share: 1 A of 16 is nearer than 10 mm of 100', () => {
  const sorted = sortFindings([of('ten mm', { margin: 10, limit: 100 }), of('one ampere', { margin: 1, limit: 16 })]);
  expect(sorted[0]?.id).toBe('one ampere');
});

test('equals stay in the order of the rules', () => {
  expect(sortFindings([of('b', {}), of('a', {})]).map(({ id }) => id)).toEqual(['b', 'a']);
});

test('an unconfirmed limit is listed once for its clause and edition', () => {
  const open = { unconfirmed: true, clause: 'c 1', edition: '2018' };
  const found = unconfirmedOf([of('x', open), of('y', open), of('z', { ...open, edition: '2022' }), of('w', {})]);
  expect(found).toEqual([
    { rule: 'r', clause: 'c 1', edition: '2018' },
    { rule: 'r', clause: 'c 1', edition: '2022' },
  ]);
});

const foot = (id: string, value: number, sense: 'at most' | 'at least' = 'at most'): Judged => ({
  about: { kind: 'rail', id, name: id },
  title: id,
  value,
  limit: 100,
  unit: 'mm',
  sense,
});
const ids = (all: readonly Judged[]) => all.map(({ about }) => about.id);

test('of many that meet only the nearest is told; of many with failing ones, every failing one', () => {
  expect(ids(failingOrNearest([foot('a', 20), foot('b', 90), foot('c', 50)]))).toEqual(['b']);
  expect(ids(failingOrNearest([foot('a', 200, 'at least'), foot('b', 110, 'at least')]))).toEqual(['b']);
  expect(ids(failingOrNearest([foot('a', 120), foot('b', 90), foot('c', 101)]))).toEqual(['a', 'c']);
  expect(failingOrNearest([])).toEqual([]);
});

test('one line for all that meet, or each that does not', () => {
  const all: Judged = { about: { kind: 'job', id: 'all', name: 'all' }, state: 'meets', title: 'all meet' };
  expect(ids(eachOrAll([foot('a', 20), foot('b', 30)], all))).toEqual(['all']);
  expect(ids(eachOrAll([foot('a', 20), foot('b', 130)], all))).toEqual(['b']);
});
