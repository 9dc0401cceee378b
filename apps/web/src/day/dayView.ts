import type { SheetView } from '../desk/sheetView.ts';
import { workingSubjects } from '../pad/subject.ts';
import { DaySheet } from './DaySheet.tsx';
import { headOfDay } from './headOfDay.ts';

/** Sheet 10. */
export const dayView: SheetView = {
  head: headOfDay,
  subjects: ({ day }) => [
    ...workingSubjects('day', day.workings),
    ...day.tasks.map(({ id, name, working, steps }) => ({ id: `task:${id}`, name, working, words: steps })),
  ],
  first: ({ day }) => (day.workings.length === 0 ? undefined : 'day:1'),
  leavesOut: ({ day }) => day.leavesOut,
  shows: 'lanes, holds, chance',
  Body: DaySheet,
};
