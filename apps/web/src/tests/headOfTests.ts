import type { Plan } from '@eaveline/plan';
import type { Head } from '../frame/head.ts';
import { counted, sentence } from '../words/count.ts';
import { withUnit } from '../words/figure.ts';

/** How many tests there are and how many were read; the first that is wanted, with what the design expects. */
export function headOfTests({ tests: { rows } }: Pick<Plan, 'tests'>): Head {
  if (rows.length === 0) return { sentence: 'Nothing to test yet.' };
  const read = rows.filter(({ reading }) => reading !== undefined);
  const over = read.filter(({ reading }) => reading?.inLimit === false).length;
  const first = rows.find(({ reading }) => reading === undefined);
  const done = read.length === 0 ? 'No readings yet' : `${read.length} of ${rows.length} read`;
  const next =
    first &&
    `${read.length === 0 ? 'The first is' : 'Next'} ${first.name.charAt(0).toLowerCase()}${first.name.slice(1)}, ${first.point}`;
  const expected = first?.predicted && `, expected ${withUnit(first.predicted.value, first.predicted.unit)}`;
  return {
    sentence: `${sentence(counted(rows.length, 'test'))}. ${done}${over > 0 ? `, ${over} past the limit` : ''}.`,
    ...(next === undefined ? {} : { quiet: `${next}${expected ?? ''}.` }),
  };
}
