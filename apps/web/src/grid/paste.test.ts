import { kestrelRise } from '@eaveline/job';
import type { Change } from '@eaveline/plan';
import { expect, test } from 'vitest';
import { changeJob } from '../job/changeJob.ts';
import { valueAt } from '../job/path.ts';
import { planeRefusal } from '../roof/planeRefusal.ts';
import type { Column, GridRow } from './column.ts';
import { type PasteInto, planPaste } from './paste.ts';
import { beyondWords, pastedWords } from './pasteWords.ts';
import type { Block } from './spots.ts';

const at = (field: string) => (id: string) => ['facts', 'roof', 'planes', id, field];
const columns: readonly Column[] = [
  { id: 'name', title: 'plane', kind: 'text', path: at('name') },
  { id: 'facing', title: 'faces', kind: 'quantity', unit: '°', path: at('facingDeg') },
  { id: 'eave', title: 'eave', kind: 'quantity', unit: 'mm', times: 1000, path: at('eaveLengthM') },
  {
    id: 'width',
    title: 'plan width',
    kind: 'quantity',
    unit: 'mm',
    times: 1000,
    path: at('planWidthM'),
    optional: true,
  },
  { id: 'area', title: 'area', unit: 'm²', kind: 'figure', show: () => '66.6' },
];
const rows: readonly GridRow[] = ['north', 'east', 'west'].map((id) => ({ id, name: id, subject: `plane:${id}` }));

function into(block: Partial<Block>): PasteInto {
  const corner = { top: 0, left: 0, bottom: block.top ?? 0, right: block.left ?? 0 };
  return { job: kestrelRise, document: kestrelRise, rows, columns, into: { ...corner, ...block } };
}

/** The value at a path once changes are taken. */
function then(changes: readonly (readonly Change[])[], path: readonly string[]): unknown {
  const changed = changeJob(kestrelRise, changes.flat());
  if ('refusal' in changed) throw new Error(changed.refusal.found);
  return valueAt(changed.job, path);
}

test('every cell is read in its own column, with units as typed', () => {
  const plan = planPaste(
    [
      ['45', '55\' 1 1/2"'],
      ['135', '10.8 m'],
    ],
    into({ left: 1 }),
  );
  expect(plan.refused).toEqual([]);
  expect(plan.reads).toHaveLength(4);
  // 55 · 304.8 + 1.5 · 25.4 = 16 802.1 mm
  expect(then(plan.reads, at('eaveLengthM')('north'))).toBe(16.8021);
  expect(then(plan.reads, at('facingDeg')('east'))).toBe(135);
});

test('one cell that is no number is named with its row, column, what was wanted and the way out; the others read', () => {
  const plan = planPaste([['45'], ['south-east'], ['270']], into({ left: 1 }));
  expect(plan.reads).toHaveLength(2);
  expect(plan.refused).toEqual([
    {
      row: 'east',
      column: 'faces, °',
      found: 'south-east is no number',
      wanted: 'an angle in °',
      mend: 'Type it in °, or with its unit: 26.6, 6/12 or 50 %.',
    },
  ]);
});

test('a number that the job does not take is refused in the words of the job', () => {
  const plan = planPaste([['45'], ['400']], into({ left: 1 }));
  expect(plan.reads).toHaveLength(1);
  expect(plan.refused).toMatchObject([{ row: 'east', found: '400 cannot be', wanted: 'at most 360°' }]);
});

test('an empty cell clears what may be left out, and is refused where something has to stand', () => {
  const plan = planPaste([['', '']], into({ left: 2 }));
  expect(plan.refused).toMatchObject([{ column: 'eave, mm', mend: 'It cannot be left empty.' }]);
  expect(then(plan.reads, at('planWidthM')('north'))).toBeUndefined();
});

test('what lies past the table is counted and never taken', () => {
  const plan = planPaste(
    [
      ['1', '2', '3', '4'],
      ['5', '6', '7', '8'],
    ],
    into({ top: 2, left: 2, bottom: 2, right: 2 }),
  );
  expect(plan.beyond).toEqual({ rows: 1, columns: 1 });
  expect(beyondWords(plan.beyond)).toBe(
    'One row past the last row and one column past the last column of this table: not taken.',
  );
  expect(plan.reads.flat().every(({ path }) => path[3] === 'west')).toBe(true);
});

test('one cell fills all the cells picked', () => {
  const plan = planPaste([['22.5']], into({ top: 0, bottom: 2, left: 1, right: 1 }));
  expect(plan.reads).toHaveLength(3);
  expect(then(plan.reads, at('facingDeg')('west'))).toBe(22.5);
});

test('a copied figure may come back over itself; anything else there is refused', () => {
  expect(planPaste([['66.6']], into({ left: 4, right: 4 }))).toMatchObject({ reads: [], refused: [] });
  expect(planPaste([['70']], into({ left: 4, right: 4 })).refused).toMatchObject([
    { column: 'area, m²', found: '70 stands where a figure is worked out' },
  ]);
});

test('the words of the step', () => {
  expect(pastedWords(12, 'circuits')).toBe('pasted 12 cells into circuits');
  expect(pastedWords(1, 'planes')).toBe('pasted 1 cell into planes');
});

test('a cell that makes its row impossible is named, the others read; two that are sound together are both taken', () => {
  const ridge: Column = {
    id: 'to',
    title: 'ridge to',
    kind: 'quantity',
    unit: 'mm',
    times: 1000,
    path: at('ridgeToM'),
  };
  const both = [columns[2] as Column, ridge];
  const refuses = (id: string, document: unknown) => planeRefusal(valueAt(document, ['facts', 'roof', 'planes', id]));
  const target = { ...into({ left: 0 }), columns: both, refuses };
  // North: eave 16.8 m, ridge from 5.4 to 11.4 m; east: eave 10.8 m, its ridge a point at 5.4 m
  const alone = planPaste([['8 m'], ['9 m']], target);
  expect(alone.refused.map(({ row, column, mend }) => ({ row, column, mend }))).toEqual([
    {
      row: 'north',
      column: 'eave, mm',
      mend: 'Lengthen the eave or draw in the ridge first, or call the right edge a valley.',
    },
  ]);
  expect(then(alone.reads, at('eaveLengthM')('north'))).toBe(16.8);
  expect(then(alone.reads, at('eaveLengthM')('east'))).toBe(9);
  const together = planPaste([['8 m', '7 m']], target);
  expect(together.refused).toEqual([]);
  expect(together.reads).toHaveLength(2);
});
