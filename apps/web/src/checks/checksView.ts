import type { SheetView } from '../desk/sheetView.ts';
import { ChecksSheet } from './ChecksSheet.tsx';
import { headOfChecks } from './headOfChecks.ts';

/** Sheet 08. Its subjects are the findings themselves. */
export const checksView: SheetView = {
  head: headOfChecks,
  subjects: () => [],
  leavesOut: ({ checks }) => checks.leavesOut,
  shows: 'every rule, judged',
  Body: ChecksSheet,
};
