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
  if (away !== undefined) return { ...head, quiet: away };
  const first = firstWords(entries);
  return first === undefined ? head : { ...head, quiet: first };
}

/** For whoever is here for the first time, while nothing but jobs for show stands in the Book. */
function firstWords(entries: readonly BookEntry[]): string | undefined {
  if (!entries.every(({ job }) => job.invented)) return undefined;
  const first = entries.find(({ job }) => job.id === FIRST)?.job ?? entries[0]?.job;
  return (
    first && `From the measures of a roof to the handover, each figure with its working. Open ${first.name} first.`
  );
}

/** The job of the demo Book that shows the most at once. */
const FIRST = 'kestrel-rise';

function headOf(entries: readonly BookEntry[]): Head {
  if (entries.length === 0) return { sentence: 'Every job is archived.' };
  const worked = entries.filter(({ summary }) => summary !== undefined);
  const left = entries.filter(
    ({ summary, notWorkedOut }) => summary === undefined && notWorkedOut === undefined,
  ).length;
  const failing = worked.filter(({ summary }) => (summary?.tally.fails ?? 0) > 0).length;
  const asking = worked.filter(
    ({ summary }) => summary !== undefined && summary.tally.fails === 0 && summary.tally.ask > 0,
  ).length;
  const rest = worked.length - failing - asking;
  const jobs = sentence(counted(entries.length, 'job'));
  // a count that grows under the eye is no answer yet
  if (left > 0) return { sentence: `${jobs}. Being worked out: ${worked.length} of ${entries.length}.` };
  const quiet = rest > 0 ? `${sentence(countWord(rest))} ${rest === 1 ? 'stands' : 'stand'} clear.` : undefined;
  const parts = [
    failing > 0 && `${countWord(failing)} ${failing === 1 ? 'fails' : 'fail'} somewhere`,
    asking > 0 && `${countWord(asking)} ${asking === 1 ? 'waits' : 'wait'} for an answer`,
  ].filter((words) => words !== false);
  const said = parts.length === 0 ? 'Nothing stops them' : sentence(parts.join(', '));
  return { sentence: `${jobs}. ${said}.`, ...(quiet === undefined ? {} : { quiet }) };
}
