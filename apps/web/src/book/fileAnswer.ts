import { type Job, writeJob } from '@eaveline/job';
import { counted, countWord, sentence } from '../words/count.ts';
import { sameState } from './copies.ts';

/** What a file that opens is to the Book. */
export type FileStanding =
  /** Its id is nowhere in the Book. */
  | { readonly kind: 'new' }
  /** The very job that is here. */
  | { readonly kind: 'same' }
  /** Another state of a job that is here: a person picks. */
  | { readonly kind: 'other state'; readonly here: Job; readonly words: string }
  /** What is kept under its id does not open. */
  | { readonly kind: 'closed'; readonly words: string };

/**
 * @param isTaken  whether anything is kept under an id, whether it opens or not.
 */
export function fileStanding(file: Job, here: Job | undefined, isTaken: (id: string) => boolean): FileStanding {
  if (here === undefined) {
    if (!isTaken(file.id)) return { kind: 'new' };
    return { kind: 'closed', words: `What is kept as ${file.id} does not open, and is left as it is.` };
  }
  if (sameState(file, here)) return { kind: 'same' };
  return { kind: 'other state', here, words: `${here.name} is here already. ${apartWords(file, here)}` };
}

/** Where two states of a job differ, as far as one sentence carries. */
function apartWords(file: Job, here: Job): string {
  const [one, other] = [parted(file), parted(here)];
  const parts = Object.keys(one).filter((part) => one[part] !== other[part]);
  const [there, mine] = [recordsIn(file), recordsIn(here)];
  const fewer = mine.ids.filter((id) => !there.ids.includes(id)).length;
  const counts = `The file has ${counted(there.ids.length, 'record')}, the job here ${counted(mine.ids.length, 'record')}.`;
  const lost =
    fewer === 0
      ? ''
      : ` ${sentence(countWord(fewer))} of those here ${fewer === 1 ? 'is' : 'are'} not in the file, and ${fewer === 1 ? 'stays' : 'stay'} either way.`;
  return `They differ in ${parts.join(', ')}. ${counts}${lost}`;
}

/** The parts of a job as text, each in the one order in which job files are written. */
function parted(job: Job): Record<string, string> {
  const { facts, choices, records, ...rest } = JSON.parse(writeJob(job)) as Record<string, unknown>;
  const parts = { facts, choices, records, 'name, customer or state': rest };
  return Object.fromEntries(Object.entries(parts).map(([part, value]) => [part, JSON.stringify(value)]));
}

function recordsIn({ records }: Job): { readonly ids: readonly string[] } {
  const { serials, readings, torques, photos, signatures } = records;
  const groups = { serials, readings, torques, photos, signatures };
  return { ids: Object.entries(groups).flatMap(([group, all]) => Object.keys(all).map((id) => `${group} ${id}`)) };
}
