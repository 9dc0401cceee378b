import type { Field, Findable, Goes } from './findable.ts';
import { closedUp, folded, oneLetterOff } from './folded.ts';

/** A job that was found, why, and where to open it. */
export interface Hit<E> {
  readonly entry: E;
  /** What each word was found in. */
  readonly fields: readonly Field[];
  readonly goes: Goes | undefined;
}

export interface Hits<E> {
  readonly hits: readonly Hit<E>[];
  /** True where nothing has the words as they were typed, and these have them with one letter changed. */
  readonly slip: boolean;
}

/** Fewest letters and figures of a serial: shorter ones occur in nearly every number. */
const SERIAL_FROM = 3;

interface Word {
  readonly folded: string;
  readonly closedUp: string;
}

/**
 * Jobs in which every word typed occurs, each somewhere; in the order they came.
 *
 * Small and large, accents, hyphens and spaces inside a number make no difference. Only where nothing at all is found
 * may one word of five letters or more be one letter off: so that what is typed right never brings anything else.
 */
export function find<E extends { readonly findable: Findable }>(entries: readonly E[], typed: string): Hits<E> {
  const words = folded(typed)
    .split(' ')
    .filter((word) => word !== '');
  if (words.length === 0)
    return { hits: entries.map((entry) => ({ entry, fields: [], goes: undefined })), slip: false };
  const wanted = words.map((word): Word => ({ folded: word, closedUp: closedUp(word) }));
  const exact = entries.flatMap((entry) => hitOf(entry, wanted, closedUp(typed)) ?? []);
  if (exact.length > 0) return { hits: exact, slip: false };
  const near = entries.flatMap((entry) => {
    const mended = mend(entry.findable, wanted);
    return (mended && hitOf(entry, mended, '')) ?? [];
  });
  return { hits: near, slip: near.length > 0 };
}

function hitOf<E extends { readonly findable: Findable }>(
  entry: E,
  wanted: readonly Word[],
  whole: string,
): Hit<E> | undefined {
  const { fields, all } = entry.findable;
  if (whole.length >= SERIAL_FROM && wanted.length > 1 && all.includes(whole)) {
    // a number typed in groups, as it stands on its label
    const number = fields.find((field) => field.closedUp?.includes(whole));
    if (number !== undefined) return { entry, fields: [number], goes: number.goes };
  }
  if (!wanted.every((word) => isIn(all, word))) return undefined;
  const found: Field[] = [];
  for (const word of wanted) {
    const field = fields.find((each) => has(each, word));
    if (field === undefined) return undefined;
    if (!found.includes(field)) found.push(field);
  }
  return { entry, fields: found, goes: found.find(({ goes }) => goes !== undefined)?.goes };
}

function isIn(text: string, word: Word): boolean {
  return text.includes(word.folded) || (word.closedUp !== '' && text.includes(word.closedUp));
}

function has(field: Field, word: Word): boolean {
  const number = field.closedUp;
  if (number !== undefined) return word.closedUp.length >= SERIAL_FROM && number.includes(word.closedUp);
  if (field.folded.includes(word.folded)) return true;
  // written with a hyphen here and with a space there; a figure close to its unit, and apart from it
  const apart = word.closedUp !== word.folded || /\d/.test(word.folded);
  return apart && word.closedUp !== '' && closedUp(field.text).includes(word.closedUp);
}

/** The words with one letter of one of them changed so that the job has them all; undefined where that does not do. */
function mend({ all, long }: Findable, wanted: readonly Word[]): Word[] | undefined {
  const missing = wanted.filter((word) => !isIn(all, word));
  const [slipped] = missing;
  if (slipped === undefined || missing.length > 1 || !/^\p{L}{5,}$/u.test(slipped.folded)) return undefined;
  const meant = long.find((word) => oneLetterOff(slipped.folded, word));
  if (meant === undefined) return undefined;
  return wanted.map((word) => (word === slipped ? { folded: meant, closedUp: meant } : word));
}

/**
 * Why a job was found, in words; the name is not said, it stands beside them.
 *
 * @param places  places of units as the drawing names them; the unit's own id where that is not worked out yet.
 */
export function whyFound(fields: readonly Field[], places: Readonly<Record<string, string>> = {}): string[] {
  return fields
    .filter(({ what }) => what !== 'name')
    .map(({ what, text, unitId }) =>
      unitId === undefined ? `${what} ${text}` : `${what} of ${places[unitId] ?? unitId}, ${text}`,
    );
}
