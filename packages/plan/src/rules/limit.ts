import type { Seen } from '../finding.ts';
import type { Limit } from './pack.ts';

/** A limit in one line. */
export function limit<T>(value: T, document: string, clause: string, seen: Seen, note?: string): Limit<T> {
  return { value, document, clause, seen, ...(note === undefined ? {} : { note }) };
}

/** Document name for what no standard says. */
export const PRACTICE = 'common practice';
