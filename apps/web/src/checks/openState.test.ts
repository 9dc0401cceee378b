import type { Finding } from '@eaveline/plan';
import { expect, test } from 'vitest';
import { openState, openWords, worseOf } from './openState.ts';

const of = (kind: Finding['about']['kind'], id: string, state: Finding['state']) => ({
  about: { kind, id, name: id },
  state,
});
const findings = [
  of('module', 'north-1-1-left', 'fails'),
  of('module', 'north-1-12', 'ask'),
  of('trunk', 'a', 'meets'),
  of('plane', 'north', 'ask'),
  of('plane', 'north', 'fails'),
];

test('a thing bears the worst of what is open about it, its parts among them', () => {
  expect(openState(findings, { kind: 'module', id: 'north-1-1', parts: true })).toBe('fails');
  expect(openState(findings, { kind: 'module', id: 'north-1-12', parts: true })).toBe('ask');
  expect(openState(findings, { kind: 'plane', id: 'north' })).toBe('fails');
});

test('what meets, another thing of a like name, and another kind bear nothing', () => {
  expect(openState(findings, { kind: 'trunk', id: 'a' })).toBeUndefined();
  expect(openState(findings, { kind: 'module', id: 'north-1', parts: false })).toBeUndefined();
  expect(openState(findings, { kind: 'row', id: 'north' })).toBeUndefined();
});

test('said in words, and the worse of two', () => {
  expect([openWords('fails'), openWords('ask'), openWords(undefined)]).toEqual([', fails', ', asks', '']);
  expect(worseOf('ask', undefined, 'fails')).toBe('fails');
  expect(worseOf(undefined)).toBeUndefined();
});
