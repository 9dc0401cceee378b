import type { Job } from '@eaveline/job';
import { counted } from '../words/count.ts';
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
  const differ = (pick: (job: Job) => unknown) => JSON.stringify(pick(file)) !== JSON.stringify(pick(here));
  const parts = [
    differ(({ facts }) => facts) && 'facts',
    differ(({ choices }) => choices) && 'choices',
    differ(({ records }) => records) && 'records',
    differ(({ facts: _f, choices: _c, records: _r, ...rest }) => rest) && 'name, customer or state',
  ].filter((words) => words !== false);
  const [there, mine] = [recordsIn(file), recordsIn(here)];
  const fewer = mine.ids.filter((id) => !there.ids.includes(id)).length;
  const counts = `The file has ${counted(there.ids.length, 'record')}, the job here ${counted(mine.ids.length, 'record')}.`;
  const lost = fewer === 0 ? '' : ` ${fewer} of those here ${fewer === 1 ? 'is' : 'are'} not in the file.`;
  return `They differ in ${parts.join(', ')}. ${counts}${lost}`;
}

function recordsIn({ records }: Job): { readonly ids: readonly string[] } {
  const { serials, readings, torques, photos, signatures } = records;
  const groups = { serials, readings, torques, photos, signatures };
  return { ids: Object.entries(groups).flatMap(([group, all]) => Object.keys(all).map((id) => `${group} ${id}`)) };
}
