import type { Job } from '@eaveline/job';
import type { PlanSummary } from '../plan/message.ts';
import type { Findable } from './findable.ts';

/** Where a job is kept. `device` is said alone until the server has answered. */
export type Where = 'device' | 'both' | 'server';

/** A job in the Book: the document, where it is kept, and the summary of its plan once that is worked out. */
export interface BookEntry {
  readonly job: Job;
  readonly where: Where;
  /** True where the server holds another state of it than this device. */
  readonly differs: boolean;
  readonly findable: Findable;
  readonly summary: PlanSummary | undefined;
  /** Why it could not be worked out. */
  readonly notWorkedOut: string | undefined;
}

/** Something kept that does not open. It is left as it is. */
export interface ClosedEntry {
  readonly id: string;
  /** As far as one is told. */
  readonly name: string;
  readonly where: 'device' | 'server';
  /** What stops it, a sentence each. */
  readonly words: readonly string[];
  /** As it is kept. */
  readonly document: unknown;
  /** True where another copy of the same job opens. */
  readonly otherCopyOpens: boolean;
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

/** A shelf of the Book, and which jobs stand on it. */
export interface Shelf {
  readonly name: string;
  readonly holds: (job: Pick<Job, 'state' | 'archived'>) => boolean;
}

const standing = (name: string, ...states: readonly Job['state'][]): Shelf => ({
  name,
  holds: ({ state, archived }) => archived === undefined && states.includes(state),
});

/** The shelves of the Book, by where a job stands; what is archived stands on its own and on no other. */
export const SHELVES: readonly Shelf[] = [
  standing('On site', 'booked', 'on site'),
  standing('Waits for somebody else', 'letter'),
  standing('On your desk', 'survey', 'design'),
  standing('Tested, to hand over', 'tested'),
  standing('Handed over', 'handed over'),
];

export const ARCHIVED: Shelf = { name: 'Archived', holds: ({ archived }) => archived !== undefined };

/** What stops a job, in a sentence. */
export function stopsIt({ summary, notWorkedOut }: Pick<BookEntry, 'summary' | 'notWorkedOut'>): string {
  if (notWorkedOut !== undefined) return `Not worked out: ${notWorkedOut}`;
  if (summary === undefined) return 'Being worked out.';
  return summary.first?.title ?? 'Nothing stops it.';
}
