import type { Plan } from '@eaveline/plan';
import type { Head } from '../frame/head.ts';
import { counted, sentence } from '../words/count.ts';
import { percent } from '../words/figure.ts';

/** How much there is to order, and how near the rail cuts come to their bound. */
export function headOfKit({ kit, checks }: Pick<Plan, 'kit' | 'checks'>): Head {
  const { lines, cutting } = kit;
  if (lines.length === 0) return { sentence: 'Nothing to order yet.' };
  const stopping = checks.findings.filter(({ state, stops }) => state === 'fails' && stops).length;
  const bars = `${sentence(counted(cutting.bars, 'bar'))} of rail`;
  const bound = cutting.bars === cutting.lowerBound ? 'fewer cannot do' : `at least ${cutting.lowerBound} are needed`;
  return {
    sentence: `${sentence(counted(lines.length, 'line'))} to order. ${stopping === 0 ? 'Nothing stands in the way.' : `Order after the ${counted(stopping, 'mend')}.`}`,
    quiet:
      cutting.bars === 0 ? 'No rail is cut.' : `${bars}, ${bound}; ${percent(cutting.wasteShare, 1)} is left over.`,
  };
}
