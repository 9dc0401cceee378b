import type { Job } from '@eaveline/job';
import type { Edit } from '@eaveline/sync/edits';
import { nameAt, thereWords } from './placeWords.ts';

/** Name of the nearest thing above a place: `Trunk A`. */
function thingAt(job: Job, path: readonly string[]): string | undefined {
  for (let depth = path.length - 1; depth > 1; depth -= 1) {
    const name = nameAt(job, path.slice(0, depth));
    if (name !== undefined) return name;
  }
  return undefined;
}

/**
 * What an edit means, as the history and a step back name it: `Trunk A: home run 24 m`.
 *
 * @param words of the field it was typed into; a whole sentence says enough by itself.
 */
export function meaningOf(job: Job, words: string, edits: readonly Edit[]): string {
  const [edit, ...more] = edits;
  if (edit === undefined || more.length > 0 || /[.!?]$/.test(words)) return words.replace(/\.$/, '');
  const { path, before, after } = edit;
  if (typeof (after ?? before) === 'object') return words;
  const thing = thingAt(job, path);
  const said = after === undefined ? `${words} taken out` : `${words} ${thereWords(job, path, after)}`;
  return thing === undefined || words.includes(thing)
    ? said
    : `${thing}: ${said.charAt(0).toLowerCase()}${said.slice(1)}`;
}
