import { kestrelRise } from '@eaveline/job';
import { expect, test } from 'vitest';
import { cellText, plainCellText, readCell } from './cell.ts';
import type { Column, PickColumn, SizeColumn, TickColumn, WholeColumn } from './column.ts';

const lines: PickColumn = {
  id: 'lines',
  title: 'lines',
  kind: 'pick',
  path: (id) => ['facts', 'loads', 'circuits', id, 'lines'],
  options: [
    { value: ['L1'], words: 'L1' },
    { value: ['L1', 'L2', 'L3'], words: 'L1 L2 L3' },
  ],
};
const feed: WholeColumn = {
  id: 'feed',
  title: 'fed at drop',
  kind: 'whole',
  path: (id) => ['choices', 'trunks', id, 'feedDrop'],
};
const moved: TickColumn = {
  id: 'moved',
  title: 'moved',
  kind: 'tick',
  path: (id) => ['choices', 'backup', 'circuits', id, 'moved'],
};
const size: SizeColumn = {
  id: 'size',
  title: 'conductor',
  kind: 'size',
  path: () => ['facts', 'supply', 'mains', 'conductor'],
};
const eave: Column = {
  id: 'eave',
  title: 'eave',
  kind: 'quantity',
  unit: 'mm',
  times: 1000,
  path: (id) => ['facts', 'roof', 'planes', id, 'eaveLengthM'],
};
const words = (column: Column, id: string, text: string) => {
  if (column.kind === 'figure') throw new Error('a figure is not read');
  const read = readCell(column, id, text, kestrelRise);
  return read.kind === 'refused' ? `${read.why.found}. ${read.why.mend}` : read.changes.map(({ value }) => value);
};

test('a cell shows what the job keeps, and copies it as a spreadsheet takes it', () => {
  expect(cellText(eave, 'north', kestrelRise)).toBe('16\u202f800');
  expect(plainCellText(eave, 'north', kestrelRise)).toBe('16800');
  expect(cellText(lines, 'fridge', kestrelRise)).toBe('L1');
  expect(cellText(moved, 'fridge', kestrelRise)).toBe('yes');
  expect(cellText(size, '', kestrelRise)).toBe('16\u00a0mm²');
});

test('a choice is read by its words, in any case', () => {
  expect(words(lines, 'fridge', 'l1 l2 l3')).toEqual([['L1', 'L2', 'L3']]);
  expect(words(lines, 'fridge', 'L4')).toBe('L4 is not offered here. Type one of L1, L1 L2 L3.');
});

test('a whole number has no part', () => {
  expect(words(feed, 'a', '5')).toEqual([5]);
  expect(words(feed, 'a', '4.5')).toBe('4.5 is no whole number. Type it without a part.');
  expect(words(feed, 'a', '')).toBe('Nothing stands there. It cannot be left empty.');
});

test('a tick is yes or no in the words of spreadsheets', () => {
  expect(words(moved, 'fridge', 'TRUE')).toEqual([true]);
  expect(words(moved, 'fridge', '0')).toEqual([false]);
  expect(words(moved, 'fridge', 'maybe')).toBe('maybe is neither yes nor no. Type yes or no.');
});

test('a conductor keeps its metal and gets its new size in the system it was typed in', () => {
  expect(words(size, '', '25')).toEqual([{ material: 'copper', strandClass: 2, areaMm2: 25 }]);
  expect(words(size, '', '2 AWG')).toEqual([{ material: 'copper', strandClass: 2, awg: '2' }]);
});
