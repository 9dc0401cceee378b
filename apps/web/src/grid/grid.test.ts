import { kestrelRise } from '@eaveline/job';
import { expect, test } from 'vitest';
import { draftWords, lackingIn, withDraft } from './addRow.ts';
import { cellMarks } from './cellMarks.ts';
import type { Column } from './column.ts';
import { freshId } from './freshId.ts';
import { runsOf } from './useRowWindow.ts';

test('a new id can be read, and is nobody else’s', () => {
  expect(freshId('plane', { north: 1, east: 1 })).toBe('plane-3');
  expect(freshId('plane', { north: 1, 'plane-3': 1 })).toBe('plane-4');
});

test('a draft lacks what its row has to have, until it is typed', () => {
  const at = (field: string) => (id: string) => ['facts', 'site', 'objects', id, field];
  const columns: readonly Column[] = [
    { id: 'name', title: 'near object', kind: 'text', path: at('name') },
    { id: 'height', title: 'height', kind: 'quantity', unit: 'm', path: at('heightM') },
    { id: 'base', title: 'foot', kind: 'quantity', unit: 'm', path: at('baseM'), optional: true },
  ];
  const row = { id: 'object-2', name: 'the new object', subject: 'object:object-2' };
  const begun = { row, changes: [{ path: at('name')('object-2'), value: 'pine' }] };
  expect(lackingIn(columns, 'object-2', withDraft(kestrelRise, { row, changes: [] }))).toEqual([
    'near object',
    'height',
  ]);
  expect(lackingIn(columns, 'object-2', withDraft(kestrelRise, begun))).toEqual(['height']);
  expect(draftWords(['height'])).toBe('Not in the job yet: height is still to be typed.');
  const whole = { row, changes: [...begun.changes, { path: at('heightM')('object-2'), value: 7 }] };
  expect(lackingIn(columns, 'object-2', withDraft(kestrelRise, whole))).toEqual([]);
});

test('a cell is marked by the finding its change would mend, and by the checks that wait for it', () => {
  const finding = (state: string, title: string, field: string) => ({
    state,
    title,
    mends: [{ words: 'w', changes: [{ path: ['choices', 'trunks', 'a', field], value: 5 }] }],
  });
  const plan = {
    site: { missing: [{ at: 'facts.roof.planes.west.rafters.spacingMm', rules: ['a', 'b', 'c'] }] },
    checks: {
      findings: [
        finding('ask', 'May it?', 'feedDrop'),
        finding('fails', 'Trunk A rises 5.32 V.', 'feedDrop'),
        finding('meets', 'All well.', 'breakerSheet'),
      ],
    },
  } as unknown as Parameters<typeof cellMarks>[0];
  const marks = cellMarks(plan);
  expect(marks.get('facts.roof.planes.west.rafters.spacingMm')).toEqual({
    state: 'ask',
    words: 'Not known yet. Three checks wait.',
  });
  expect(marks.get('choices.trunks.a.feedDrop')).toEqual({ state: 'fails', words: 'Trunk A rises 5.32 V.' });
  expect(marks.has('choices.trunks.a.breakerSheet')).toBe(false);
});

test('of a long table the rows seen are drawn, and the one with the focus wherever it is', () => {
  expect(runsOf(1000, { from: 500, to: 520 }, 510)).toEqual([{ from: 488, to: 532 }]);
  expect(runsOf(1000, { from: 500, to: 520 }, 3)).toEqual([
    { from: 3, to: 4 },
    { from: 488, to: 532 },
  ]);
  expect(runsOf(1000, { from: 0, to: 20 }, 999)).toEqual([
    { from: 0, to: 32 },
    { from: 999, to: 1000 },
  ]);
});
