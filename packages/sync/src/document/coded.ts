import { ImmutableString, isImmutableString } from '@automerge/automerge/slim';
import { isBranch } from './edit.ts';

/** Places people write sentences at: two who write at once should find both their words there. */
const SENTENCES = new Set(['note']);

/** Is a text under this name written together, letter by letter, rather than set whole? */
export function isSentence(name: string | undefined): boolean {
  return name !== undefined && SENTENCES.has(name);
}

/**
 * A plain value as the document keeps it.
 *
 * Ids, serials, units and words of a list are kept whole: half of one serial and half of another is no serial.
 * It also keeps the document small: an editable text costs an operation for each letter.
 *
 * @param name under which it stands.
 */
export function coded(value: unknown, name: string | undefined): unknown {
  if (typeof value === 'string') return isSentence(name) ? value : new ImmutableString(value);
  if (Array.isArray(value)) return value.map((each) => coded(each, undefined));
  if (!isBranch(value)) return value;
  return Object.fromEntries(
    Object.entries(value)
      .filter(([, each]) => each !== undefined)
      .map(([each, below]) => [each, coded(below, each)]),
  );
}

/** A document's value as plain data again. */
export function plain(value: unknown): unknown {
  if (isImmutableString(value)) return value.toString();
  if (Array.isArray(value)) return value.map(plain);
  if (!isBranch(value)) return value;
  return Object.fromEntries(Object.entries(value).map(([name, below]) => [name, plain(below)]));
}
