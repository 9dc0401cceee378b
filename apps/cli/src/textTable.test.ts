import { expect, test } from 'vitest';
import { textTable } from './textTable.ts';

test('columns are as wide as their widest cell, figures stand right, no line ends in spaces', () => {
  const rows = [
    ['Kestrel Rise', '2', 'au-nz'],
    ['Yard', '12', ''],
  ];
  expect(textTable(['Job', 'Fails', 'Region'], rows, [1])).toBe(
    ['Job           Fails  Region', 'Kestrel Rise      2  au-nz', 'Yard             12'].join('\n'),
  );
});
