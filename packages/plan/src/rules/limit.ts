import type { Seen } from '../finding.ts';

/** A limit of a rule pack: its value, where it stands, and how it is known. */
export interface Limit<T = number> {
  readonly value: T;
  /** `AS/NZS 4777.1 cl 3.3.3`. */
  readonly clause: string;
  /** Key into `choices.rules.editions`: `AS/NZS 4777.1`. */
  readonly document: string;
  readonly seen: Seen;
  readonly note?: string;
}

/** A limit in one line. */
export function limit<T>(value: T, document: string, clause: string, seen: Seen, note?: string): Limit<T> {
  return { value, document, clause, seen, ...(note === undefined ? {} : { note }) };
}

/** Document name for what no standard says. */
export const PRACTICE = 'common practice';
