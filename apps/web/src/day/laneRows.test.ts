import { expect, test } from 'vitest';
import { laneRows } from './laneRows.ts';

const task = (id: string, ...parts: [day: number, startH: number, endH: number][]) => ({
  id,
  parts: parts.map(([day, startH, endH]) => ({ day, startH, endH })),
});

test('tasks one after another share a row; two at once stand under one another; one that is broken off keeps its row', () => {
  const rows = laneRows([
    task('rails', [1, 0, 2]),
    task('units', [1, 2, 4]),
    task('cables', [1, 1, 3]),
    task('late', [1, 7, 8.5], [2, 0, 1]),
  ]);
  expect(rows.map((row) => row.map(({ id }) => id))).toEqual([['rails', 'units', 'late'], ['cables']]);
});

test('a task done before is in no lane', () => {
  expect(laneRows([task('done')])).toEqual([]);
});
