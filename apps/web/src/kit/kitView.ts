import type { SheetView } from '../desk/sheetView.ts';
import { workingSubjects } from '../pad/subject.ts';
import { barSubjects } from './barSubjects.ts';
import { headOfKit } from './headOfKit.ts';
import { KitSheet } from './KitSheet.tsx';

/** Sheet 09. */
export const kitView: SheetView = {
  head: headOfKit,
  subjects: ({ kit }) => [
    ...kit.lines.map(({ id, name, working }) => ({ id: `kit:${id}`, name, working })),
    ...barSubjects(kit),
    ...workingSubjects('kit-stage', kit.workings),
  ],
  leavesOut: ({ kit }) => kit.leavesOut,
  shows: 'order list, rail cuts',
  Body: KitSheet,
};
