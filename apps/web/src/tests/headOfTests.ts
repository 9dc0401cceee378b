import type { Plan } from '@eaveline/plan';
import type { Head } from '../frame/head.ts';
import { counted, countWord, sentence } from '../words/count.ts';
import { withUnit } from '../words/figure.ts';
import { failsReading } from './standing.ts';
import { firstUnread } from './testGroups.ts';

/** How many tests there are and how many were read; the first that is wanted, with what the design expects. */
export function headOfTests({ tests: { rows } }: Pick<Plan, 'tests'>): Head {
  if (rows.length === 0) return { sentence: 'Nothing to test yet.' };
  const read = rows.filter(({ reading }) => reading !== undefined);
  const off = read.filter(failsReading).length;
  const first = firstUnread(rows);
  const next =
    first &&
    `${read.length === 0 ? 'The first is' : 'Next:'} ${first.name.charAt(0).toLowerCase()}${first.name.slice(1)}, ${first.point}`;
  const expected = first?.predicted && `, expected ${withUnit(first.predicted.value, first.predicted.unit)}`;
  return {
    sentence:
      read.length === 0
        ? `${sentence(counted(rows.length, 'test'))}. No readings yet.`
        : `${read.length} of ${rows.length} tests read. ${offWords(off)}`,
    quiet: next === undefined ? 'Every test has a reading.' : `${next}${expected ?? ''}.`,
  };
}

function offWords(off: number): string {
  if (off === 0) return 'All as they have to be.';
  return `${sentence(countWord(off))} ${off === 1 ? 'is' : 'are'} not as ${off === 1 ? 'it has' : 'they have'} to be.`;
}
