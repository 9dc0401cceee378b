import { expect, test } from 'vitest';
import { dropGroups } from './dropGroups.ts';

test('neighbours of one row stand under one bracket; a row met again later has a bracket of its own', () => {
  const drops = [1, 2, 3, 4, 5].map((number) => ({ number, unitId: `u${number}` }));
  const rows = [2, 2, 1, 1, 2];
  const modules = rows.map((row, i) => ({ unitId: `u${i + 1}`, planeId: 'n', row }));
  expect(dropGroups(drops, modules, [{ id: 'n', name: 'North' }])).toEqual([
    { words: 'north, row 2', first: 1, last: 2 },
    { words: 'north, row 1', first: 3, last: 4 },
    { words: 'north, row 2', first: 5, last: 5 },
  ]);
});

test('a spare drop stands under no bracket', () => {
  expect(dropGroups([{ number: 1 }], [], [])).toEqual([]);
});
