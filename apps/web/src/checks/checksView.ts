import type { SheetView } from '../desk/sheetView.ts';
import { ruleWords } from '../words/ruleWords.ts';
import { ChecksSheet } from './ChecksSheet.tsx';
import { headOfChecks } from './headOfChecks.ts';

/** `Roof path: not judged here.`: a rule is named in words, as everywhere on the sheets. */
function inWords(line: string): string {
  return line.replace(/^[a-z]+(?:-[a-z]+)*(?=: not judged)/, ruleWords);
}

/** Sheet 08. Its subjects are the findings themselves. */
export const checksView: SheetView = {
  head: headOfChecks,
  subjects: () => [],
  leavesOut: ({ checks }) => checks.leavesOut.map(inWords),
  shows: 'every rule, judged',
  Body: ChecksSheet,
};
