import type { KitPlan, Plan } from '@eaveline/plan';
import type { Head } from '../frame/head.ts';
import { counted, sentence } from '../words/count.ts';

/** How near the cutting comes to the bound: proven least, or how few might do. */
export function boundWords({ bars, lowerBound, proven }: KitPlan['cutting']): string {
  const takes = `${sentence(counted(bars, 'bar'))} of rail`;
  if (bars === lowerBound || proven) return `${takes}: no cutting does with fewer.`;
  return `${takes}. Fewer than ${counted(lowerBound, 'bar')} cannot do; in between nothing is proven.`;
}

/** How much there is to order, and how near the rail cuts come to their bound. */
export function headOfKit({ kit, checks }: Pick<Plan, 'kit' | 'checks'>): Head {
  const { lines, cutting } = kit;
  if (lines.length === 0) return { sentence: 'Nothing to order yet.' };
  const stopping = checks.findings.filter(({ state, stops }) => state === 'fails' && stops).length;
  const wait =
    stopping === 0
      ? 'Nothing stands in the way.'
      : `Order after the ${stopping === 1 ? 'mend' : `${counted(stopping, 'mend')}`}.`;
  return {
    sentence: `${sentence(counted(lines.length, 'line'))} to order. ${wait}`,
    quiet: cutting.bars === 0 ? 'No rail is cut.' : boundWords(cutting),
  };
}
