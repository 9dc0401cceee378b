import type { Head } from '../frame/head.ts';
import { counted, countWord, sentence } from '../words/count.ts';
import type { BookEntry } from './entry.ts';

/** How the Book opens: how many jobs stop at something, how many wait. */
export function headOfBook(entries: readonly BookEntry[]): Head {
  if (entries.length === 0)
    return {
      sentence: 'The Book is empty.',
      quiet: 'A job comes into it when its file is opened or saved on the server.',
    };
  const worked = entries.filter(({ summary }) => summary !== undefined);
  const left = entries.length - worked.length;
  const failing = worked.filter(({ summary }) => (summary?.tally.fails ?? 0) > 0).length;
  const asking = worked.filter(
    ({ summary }) => summary !== undefined && summary.tally.fails === 0 && summary.tally.ask > 0,
  ).length;
  const rest = worked.length - failing - asking;
  const jobs = sentence(counted(entries.length, 'job'));
  if (worked.length === 0) return { sentence: `${jobs} in the Book.`, quiet: 'Their plans are being worked out.' };
  const quiet = [
    rest > 0 && `${sentence(countWord(rest))} ${rest === 1 ? 'stands' : 'stand'} clear`,
    left > 0 && `${sentence(countWord(left))} still being worked out`,
  ].filter((words) => words !== false);
  const parts = [
    failing > 0 && `${countWord(failing)} fail somewhere`,
    asking > 0 && `${countWord(asking)} wait for an answer`,
  ].filter((w) => w !== false);
  const said =
    parts.length === 0
      ? 'Nothing stops them'
      : sentence(parts.join(', '))
          .replace(/^One fail /, 'One fails ')
          .replace(/one wait /i, (m) => m.replace('wait', 'waits'));
  return { sentence: `${jobs}. ${said}.`, ...(quiet.length === 0 ? {} : { quiet: `${quiet.join('. ')}.` }) };
}
