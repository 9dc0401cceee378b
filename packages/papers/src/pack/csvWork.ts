import type { Plan } from '@eaveline/plan';
import type { CsvCell } from './csv.ts';

/** Heads and rows of one file. */
export interface CsvTable {
  readonly heads: readonly string[];
  readonly rows: readonly (readonly CsvCell[])[];
}

export function yes(is: boolean): string {
  return is ? 'yes' : 'no';
}

/** Every test with its prediction, its limit and the last reading. */
export function testsTable({ tests }: Plan): CsvTable {
  return {
    heads: [
      'id',
      'order',
      'group',
      'test',
      'point',
      'instrument',
      'predicted',
      'low',
      'high',
      'unit',
      'wanted',
      'limit',
      'limit sense',
      'limit unit',
      'clause',
      'reading',
      'reading unit',
      'read by',
      'read at',
    ],
    rows: tests.rows.map((row) => [
      row.id,
      row.order,
      row.group,
      row.name,
      row.point,
      row.instrument,
      row.predicted?.value,
      row.predicted?.low,
      row.predicted?.high,
      row.predicted?.unit,
      row.wanted,
      row.limit?.value,
      row.limit?.sense,
      row.limit?.unit,
      row.limit?.clause,
      row.reading?.value,
      row.reading?.unit,
      row.reading?.by,
      row.reading?.at,
    ]),
  };
}

/** Every task with its hours and its place in the days. */
export function tasksTable({ day }: Plan): CsvTable {
  return {
    heads: [
      'id',
      'task',
      'place',
      'who',
      'people',
      'electricians',
      'low, h',
      'likely, h',
      'high, h',
      'after',
      'day',
      'from start of day, h',
      'to, h',
      'done before',
      'hold point',
    ],
    rows: day.tasks.map((task) => [
      task.id,
      task.name,
      task.place,
      task.who,
      task.people,
      task.electricians,
      task.hours.low,
      task.hours.likely,
      task.hours.high,
      task.after.join(' '),
      task.day,
      task.startH,
      task.endH,
      yes(task.doneBefore),
      task.hold,
    ]),
  };
}
