import { updateText } from '@automerge/automerge/slim';
import { coded, isSentence } from './coded.ts';

type Draft = Record<string, unknown>;

/**
 * Sets or takes away the value at a place of a document being changed.
 *
 * Maps on the way that are missing are made; a thing is never put where a plain value stands without replacing it.
 */
export function putAt(root: Draft, path: readonly string[], value: unknown): void {
  const last = path.at(-1);
  if (last === undefined) throw new Error('A change has to name a place in the job');
  let here: Draft = root;
  for (const name of path.slice(0, -1)) {
    if (typeof here[name] !== 'object' || here[name] === null) {
      if (value === undefined) return; // nothing there to take away
      here[name] = {};
    }
    here = here[name] as Draft;
  }
  if (value === undefined) delete here[last];
  // letter by letter, so that what somebody else writes into the same sentence stays in it
  else if (typeof value === 'string' && isSentence(last) && typeof here[last] === 'string')
    updateText(root, [...path], value);
  else here[last] = coded(value, last);
}
