import type { SheetView } from '../desk/sheetView.ts';
import { sentence } from '../words/count.ts';
import { ChecksSheet } from './ChecksSheet.tsx';
import { headOfChecks } from './headOfChecks.ts';

/** `Roof path: not judged here.`: a rule is named in words, as everywhere on the sheets. */
function inWords(line: string): string {
  return sentence(line.replace(/^[a-z]+(?:-[a-z]+)+(?=:)/, (rule) => rule.replaceAll('-', ' ')));
}

/** Sheet 08. Its subjects are the findings themselves. */
export const checksView: SheetView = {
  head: headOfChecks,
  subjects: () => [],
  leavesOut: ({ checks }) => checks.leavesOut.map(inWords),
  shows: 'every rule, judged',
  Body: ChecksSheet,
};
