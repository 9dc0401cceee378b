import fc from 'fast-check';
import { expect, test } from 'vitest';
import { readTable, writeTable } from './tableText.ts';

test('a block as a spreadsheet copies it: tabs, line ends of either sort, one at the very end', () => {
  const block = [
    ['North', '22.5', '16 800'],
    ['East', '22.5', '10 800'],
  ];
  expect(readTable('North\t22.5\t16 800\r\nEast\t22.5\t10 800\r\n')).toEqual(block);
  expect(readTable('North\t22.5\t16 800\nEast\t22.5\t10 800')).toEqual(block);
  expect(readTable('\ufeffNorth\t22.5\t16 800\rEast\t22.5\t10 800\r')).toEqual(block);
});

test('cells in quotes hold tabs, breaks and quotes; a quote that closes nothing is inches', () => {
  expect(readTable('"a\tb"\t"two\nlines"\t"say ""so"""')).toEqual([['a\tb', 'two\nlines', 'say "so"']]);
  expect(readTable('6\' 4"\t12"\n"\t3')).toEqual([
    ['6\' 4"', '12"'],
    ['"', '3'],
  ]);
});

test('empty cells and a whole empty row keep their places', () => {
  expect(readTable('1\t\t3\n\t\t\n4\t5\t6')).toEqual([
    ['1', '', '3'],
    ['', '', ''],
    ['4', '5', '6'],
  ]);
});

test('text with commas or semicolons alike in every line is a table', () => {
  expect(readTable('flue,vent\n6360,13460')).toEqual([
    ['flue', 'vent'],
    ['6360', '13460'],
  ]);
  expect(readTable('flue;6,36\nvent;13,46\n')).toEqual([
    ['flue', '6,36'],
    ['vent', '13,46'],
  ]);
  expect(readTable('"flue, old",6360,2970')).toEqual([['flue, old', '6360', '2970']]);
});

test('a comma inside one number, or down a column of decimal commas, parts nothing', () => {
  expect(readTable('22,5')).toEqual([['22,5']]);
  expect(readTable('1,200,300')).toEqual([['1,200,300']]);
  expect(readTable('Water pump, 0.75 kW')).toEqual([['Water pump, 0.75 kW']]);
  expect(readTable('22,5\n30,0\n')).toEqual([['22,5'], ['30,0']]);
});

test('law: what is written is read back, whatever stands in the cells', () => {
  const cell = fc.string({ maxLength: 12 });
  const table = fc
    .integer({ min: 2, max: 5 })
    .chain((wide) => fc.array(fc.array(cell, { minLength: wide, maxLength: wide }), { minLength: 1, maxLength: 5 }));
  fc.assert(
    fc.property(table, (rows) => {
      expect(readTable(writeTable(rows))).toEqual(rows);
    }),
  );
});
