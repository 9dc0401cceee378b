import type { SheetView } from '../desk/sheetView.ts';
import { HandoverSheet } from './HandoverSheet.tsx';
import { headOfHandover } from './headOfHandover.ts';
import { openEnds } from './openEnds.ts';

/** Sheet 12. */
export const handoverView: SheetView = {
  head: (plan, job) => headOfHandover(openEnds(plan, job)),
  subjects: () => [],
  leavesOut: () => [],
  shows: 'pack, open ends',
  Body: HandoverSheet,
};
