import type { Job } from '@eaveline/job';
import { type Edit, valueAt } from '@eaveline/sync/edits';
import { nameAt, placeWords, thereWords } from './placeWords.ts';

/** Several places are told one by one up to so many. */
const MOST_TOLD = 3;
/** Words that say what was done, not where: `moved 3 modules`. */
const DONE = /^(added|done|emptied|filled|moved|pasted|took) /;

/**
 * What an edit means, as the history and a step back name it: `Trunk A: home run 24 m`, `moved 3 modules`.
 *
 * @param words of the field it was typed into, with its row before it in a table, `A: home run`; or what was done. A
 *   whole sentence says enough by itself.
 */
export function meaningOf(job: Job, words: string, edits: readonly Edit[]): string {
  const said = words.replace(/\.$/, '');
  if (/[.!?](\s|$)/.test(words) || edits.length === 0) return said;
  // who found a fact belongs to the fact
  const facts = edits.filter(({ path }) => !isProvenance(path));
  const [first] = facts.length > 0 ? facts : edits;
  if (first === undefined) return said;
  if (DONE.test(said)) return said.startsWith('added ') ? withName(job, said, facts) : said;
  if (facts.length === 0) return withThing(job, factOf(first.path), `${said}, ${foundWords(job, first.path)}`);
  const at = facts.length === 1 ? first.path : commonPath(facts);
  return withThing(job, at, `${said}${valueWords(job, at, facts)}`);
}

const isProvenance = (path: readonly string[]) => path[0] === 'facts' && path[1] === 'provenance';

/** The place a provenance speaks of: it is kept under the whole path of its fact. */
function factOf([, , fact = '']: readonly string[]): readonly string[] {
  return ['facts', ...fact.split('.')];
}

/** `seen by Nia`, `not measured: painted shut`. */
function foundWords(job: Job, [, , fact = '']: readonly string[]): string {
  const seen = valueAt(job, ['facts', 'provenance', fact]);
  if (typeof seen !== 'object' || seen === null) return 'no longer seen by anybody';
  if ('notMeasured' in seen && typeof seen.notMeasured === 'string') return `not measured: ${seen.notMeasured}`;
  return 'by' in seen && typeof seen.by === 'string' && seen.by !== '' ? `seen by ${seen.by}` : 'seen';
}

/** The place that holds all of several. */
function commonPath(edits: readonly Edit[]): readonly string[] {
  const [first, ...others] = edits.map(({ path }) => path);
  if (first === undefined) return [];
  const apart = first.findIndex((step, i) => others.some((path) => path[i] !== step));
  return apart < 0 ? first : first.slice(0, apart);
}

/** ` 24 m` behind a field; of a few places below one, each; nothing where they are too many to be read in a line. */
function valueWords(job: Job, at: readonly string[], edits: readonly Edit[]): string {
  const [only] = edits;
  if (edits.length === 1 && only !== undefined) {
    if (typeof (only.after ?? only.before) === 'object' && !Array.isArray(only.after)) return '';
    return only.after === undefined ? ' taken out' : ` ${thereWords(job, at, only.after)}`;
  }
  const stand = edits.filter(({ after }) => after !== undefined);
  // no further apart than within one group of the job: else one line does not say where each of them is
  if (at.length < 3 || stand.length === 0 || stand.length > MOST_TOLD) return '';
  if (stand.some(({ after }) => typeof after === 'object')) return '';
  const above = placeWords(job, at);
  const each = stand.map(({ path, after }) => {
    const whole = placeWords(job, path);
    const place = whole.startsWith(`${above}, `) ? whole.slice(above.length + 2) : whole;
    return `${place} ${thereWords(job, path, after)}`;
  });
  return `: ${each.join(', ')}`;
}

/** Puts the nearest thing that has a name before what is said; a row's own name gives way to it: Trunk A for A. */
function withThing(job: Job, path: readonly string[], said: string): string {
  for (let depth = path.length; depth > 1; depth -= 1) {
    const at = path.slice(0, depth);
    const name = nameAt(job, at);
    if (name === undefined) continue;
    const row = `${String(valueAt(job, [...at, 'name']))}: `;
    if (said.startsWith(row)) return `${name}: ${said.slice(row.length)}`;
    if (said.includes(name)) return said;
    return `${name}: ${said.charAt(0).toLowerCase()}${said.slice(1)}`;
  }
  return said;
}

/** `added a plane: Lee`. */
function withName(job: Job, said: string, edits: readonly Edit[]): string {
  const at = commonPath(edits);
  for (let depth = at.length; depth > 2; depth -= 1) {
    const name = nameAt(job, at.slice(0, depth));
    if (name !== undefined) return `${said}: ${name}`;
  }
  return said;
}
