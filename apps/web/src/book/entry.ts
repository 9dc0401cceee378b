import type { Job } from '@eaveline/job';
import type { PlanSummary } from '../plan/message.ts';

/** A job in the Book: the document, and the summary of its plan once that is worked out. */
export interface BookEntry {
  readonly job: Job;
  readonly summary: PlanSummary | undefined;
  /** Why it could not be worked out. */
  readonly notWorkedOut: string | undefined;
}

export const STATIONS = [
  'survey',
  'design',
  'letter',
  'booked',
  'on site',
  'tested',
  'handed over',
] as const satisfies readonly Job['state'][];

/** The shelves of the Book, by where a job stands. */
export const SHELVES: readonly { readonly name: string; readonly states: readonly Job['state'][] }[] = [
  { name: 'On site', states: ['booked', 'on site'] },
  { name: 'Waits for somebody else', states: ['letter'] },
  { name: 'On your desk', states: ['survey', 'design'] },
  { name: 'Tested, to hand over', states: ['tested'] },
  { name: 'Handed over', states: ['handed over'] },
];

/** Everything of a job one may look for it by: name, address, customer, state, serials, equipment. */
export function findable({ job }: BookEntry): string {
  const { facts, customer, records, choices } = job;
  const serials = Object.values(records.serials).map(({ serial }) => serial);
  const equipment = Object.values(choices.equipment).map(({ name }) => name);
  return [job.name, facts.site.address, customer.name, job.state, job.about, ...serials, ...equipment]
    .join('\n')
    .toLowerCase();
}

/** Entries in which every word looked for occurs. */
export function found(entries: readonly BookEntry[], words: string): BookEntry[] {
  const wanted = words
    .toLowerCase()
    .split(/\s+/)
    .filter((word) => word !== '');
  return entries.filter((entry) => {
    const text = findable(entry);
    return wanted.every((word) => text.includes(word));
  });
}

/** What stops a job, in a sentence. */
export function stopsIt({ summary, notWorkedOut }: BookEntry): string {
  if (notWorkedOut !== undefined) return `Not worked out: ${notWorkedOut}`;
  if (summary === undefined) return 'Being worked out.';
  return summary.first?.title ?? 'Nothing stops it.';
}
