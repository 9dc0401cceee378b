import { expect, test } from 'vitest';
import { blockOf, cellCount, holds, kept, ledBy, tabbed } from './spots.ts';

const size = { rows: 4, columns: 7 };
const at = (row: number, column: number) => ({ row, column });

test('arrows go one cell and stay at the edge; with Ctrl they go to the end', () => {
  expect(ledBy('ArrowDown', false, at(1, 2), size)).toEqual(at(2, 2));
  expect(ledBy('ArrowDown', false, at(3, 2), size)).toEqual(at(3, 2));
  expect(ledBy('ArrowLeft', false, at(1, 0), size)).toEqual(at(1, 0));
  expect(ledBy('ArrowRight', true, at(1, 0), size)).toEqual(at(1, 6));
  expect(ledBy('ArrowUp', true, at(3, 5), size)).toEqual(at(0, 5));
});

test('Home and End go along the row, with Ctrl to the corners; pages go ten rows', () => {
  expect(ledBy('Home', false, at(2, 5), size)).toEqual(at(2, 0));
  expect(ledBy('End', false, at(2, 5), size)).toEqual(at(2, 6));
  expect(ledBy('Home', true, at(2, 5), size)).toEqual(at(0, 0));
  expect(ledBy('End', true, at(2, 5), size)).toEqual(at(3, 6));
  expect(ledBy('PageDown', false, at(0, 1), { rows: 30, columns: 2 })).toEqual(at(10, 1));
  expect(ledBy('PageUp', false, at(3, 1), size)).toEqual(at(0, 1));
  expect(ledBy('x', false, at(0, 0), size)).toBeUndefined();
});

test('Tab reads on into the next row, Shift and Tab back', () => {
  expect(tabbed(at(0, 6), false, size)).toEqual(at(1, 0));
  expect(tabbed(at(1, 0), true, size)).toEqual(at(0, 6));
  expect(tabbed(at(3, 6), false, size)).toEqual(at(3, 6));
});

test('a block lies between two cells whichever came first', () => {
  const block = blockOf(at(3, 1), at(1, 4));
  expect(block).toEqual({ top: 1, bottom: 3, left: 1, right: 4 });
  expect(cellCount(block)).toBe(12);
  expect(holds(block, at(2, 4))).toBe(true);
  expect(holds(block, at(0, 2))).toBe(false);
});

test('where rows have gone, one stands on the last', () => {
  expect(kept(at(9, 2), size)).toEqual(at(3, 2));
  expect(kept(at(2, 2), { rows: 0, columns: 7 })).toEqual(at(0, 2));
});
