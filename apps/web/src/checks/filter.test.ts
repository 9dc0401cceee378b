import type { Finding } from '@eaveline/plan';
import { expect, test } from 'vitest';
import { EVERYTHING, filtered, pickable } from './filter.ts';

const of = (name: string, sheet: Finding['sheet'], state: Finding['state']) => ({
  about: { kind: 'trunk' as const, id: name, name },
  sheet,
  state,
});
const all = [
  of('Trunk A', '04', 'fails'),
  of('Trunk B', '04', 'ask'),
  of('Board', '05', 'ask'),
  of('Trunk A', '05', 'meets'),
];

test('by state, by sheet, by thing, and all at once; the order stays', () => {
  expect(filtered(all, EVERYTHING)).toEqual(all);
  expect(filtered(all, { ...EVERYTHING, state: 'ask' }).map(({ about }) => about.name)).toEqual(['Trunk B', 'Board']);
  expect(filtered(all, { ...EVERYTHING, thing: 'Trunk A' }).map(({ sheet }) => sheet)).toEqual(['04', '05']);
  expect(filtered(all, { state: 'ask', sheet: '05', thing: 'Trunk A' })).toEqual([]);
});

test('only sheets and things that have findings are offered', () => {
  expect(pickable(all, '')).toEqual({ sheets: ['04', '05'], things: ['Board', 'Trunk A', 'Trunk B'] });
  expect(pickable(all, '05').things).toEqual(['Board', 'Trunk A']);
});
