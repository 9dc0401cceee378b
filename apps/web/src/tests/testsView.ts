import type { SheetView } from '../desk/sheetView.ts';
import { workingSubjects } from '../pad/subject.ts';
import { headOfTests } from './headOfTests.ts';
import { TestsSheet } from './TestsSheet.tsx';
import { firstUnread } from './testGroups.ts';

/** Sheet 11. */
export const testsView: SheetView = {
  head: headOfTests,
  subjects: ({ tests }) => [
    ...tests.rows.map(({ id, name, point, predicted, wanted }) => ({
      id,
      name: `${name}, ${point}`,
      ...(predicted === undefined ? { words: [wanted ?? 'Looked at, not measured.'] } : { working: predicted.working }),
    })),
    ...workingSubjects('tests', tests.workings),
  ],
  first: ({ tests }) => (firstUnread(tests.rows) ?? tests.rows[0])?.id,
  leavesOut: ({ tests }) => tests.leavesOut,
  shows: 'tests, predicted',
  Body: TestsSheet,
};
