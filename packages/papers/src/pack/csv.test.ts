import { expect, test } from 'vitest';
import { parseCsv } from '../../test/parseCsv.ts';
import { readCsvWord, writeCsv } from './csv.ts';

test('commas, quotes and line ends survive, RFC 4180', () => {
  const text = writeCsv(
    ['a', 'b'],
    [
      ['one, two', 'say "so"'],
      ['first\nsecond', ''],
    ],
  );
  expect(text).toBe('a,b\r\n"one, two","say ""so"""\r\n"first\nsecond",\r\n');
  expect(parseCsv(text)).toEqual([
    ['a', 'b'],
    ['one, two', 'say "so"'],
    ['first\nsecond', ''],
  ]);
});

test('no word of a job is run as a formula by a spreadsheet', () => {
  const words = ['=HYPERLINK("x")', '+1', '-1 off', '@cell', '\tx', "'quoted", 'plain', 'a=b'];
  const cells = parseCsv(
    writeCsv(
      ['w'],
      words.map((word) => [word]),
    ),
  )
    .slice(1)
    .map(([cell]) => cell as string);
  expect(cells.filter((cell) => /^[=+\-@\t\r]/.test(cell))).toEqual([]);
  expect(cells.map(readCsvWord)).toEqual(words);
});

test('numbers stay numbers, unrounded; what is not known is an empty cell', () => {
  expect(writeCsv(['n', 'm', 'x'], [[-0.30000000000000004, 1e-7, undefined]])).toBe(
    'n,m,x\r\n-0.30000000000000004,1e-7,\r\n',
  );
});
