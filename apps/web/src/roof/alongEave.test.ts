import { expect, test } from 'vitest';
import { alongEave } from './alongEave.ts';

const lengths = (...of: Parameters<typeof alongEave>) => alongEave(...of).map(({ fromM, toM }) => toM - fromM);

test('12 m of eave, a row from 2 to 9: 2, 7 and 3 m', () => {
  expect(lengths(12, 2, 9)).toEqual([2, 7, 3]);
});

test('an eave of 6 m under the same row: 2 m, 4 m to the end of the eave, 3 m past it', () => {
  expect(lengths(6, 2, 9)).toEqual([2, 4, 3]);
});

test('a row that begins 1 m left of the eave: 1 m, then 8 m on it, then 4 m', () => {
  expect(lengths(12, -1, 8)).toEqual([1, 8, 4]);
});

test('a row quite past the eave, and one as long as it', () => {
  expect(lengths(3, 4, 9)).toEqual([3, 1, 5]);
  expect(lengths(9, 0, 9)).toEqual([9]);
});
