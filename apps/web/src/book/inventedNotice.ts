import { listed } from '../words/count.ts';
import type { BookEntry } from './entry.ts';

/** Says at the foot of the Book which jobs are made up: all of them, or these by name. */
export function inventedNotice(entries: readonly BookEntry[]): { readonly notice?: string } {
  const names = entries.filter(({ job }) => job.invented).map(({ job }) => job.name);
  if (names.length === 0) return {};
  if (names.length === entries.length)
    return { notice: 'All jobs here are invented, for show and training: not for construction.' };
  return { notice: `Invented, for show and training, not for construction: ${listed(names)}.` };
}
