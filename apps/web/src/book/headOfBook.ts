import type { Head } from '../frame/head.ts';
import { counted, countWord, sentence } from '../words/count.ts';
import type { Book } from './bookDesk.ts';
import { ARCHIVED, type BookEntry } from './entry.ts';
import { awayWords } from './keptWords.ts';

/** How the Book opens: how many jobs stop at something, how many wait; below it what does not answer. */
export function headOfBook(book: Pick<Book, 'entries' | 'device' | 'server'>): Head {
  const { entries, device, server } = book;
  const away = awayWords(book);
  if (entries.length === 0) {
    if (device.kind === 'asking' || server.kind === 'asking') return { sentence: 'The Book is being opened.' };
    return {
      sentence: away === undefined ? 'The Book is empty.' : 'Nothing can be shown.',
      quiet: away ?? 'Begin with an address, open a job file, or let one go over this page.',
    };
  }
  const head = headOf(entries.filter(({ job }) => !ARCHIVED.holds(job)));
  return away === undefined ? head : { ...head, quiet: away };
}

function headOf(entries: readonly BookEntry[]): Head {
  if (entries.length === 0) return { sentence: 'Every job is archived.' };
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
    failing > 0 && `${countWord(failing)} ${failing === 1 ? 'fails' : 'fail'} somewhere`,
    asking > 0 && `${countWord(asking)} ${asking === 1 ? 'waits' : 'wait'} for an answer`,
  ].filter((words) => words !== false);
  const said = parts.length === 0 ? 'Nothing stops them' : sentence(parts.join(', '));
  return { sentence: `${jobs}. ${said}.`, ...(quiet.length === 0 ? {} : { quiet: `${quiet.join('. ')}.` }) };
}
