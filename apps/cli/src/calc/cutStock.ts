import { cutStock } from '@eaveline/physics';
import { z } from 'zod';
import { defineCalc } from './calc.ts';
import { fig, list, num, optionalNum, yes } from './fields.ts';

const same = 'same unit throughout';

export const cutStockCalc = defineCalc({
  name: 'cut-stock',
  line: 'wanted lengths cut from few stock lengths, with the bound below which none can go',
  source:
    'first fit and best fit decreasing, minimum bin slack (Gupta and Ho 1999), cutting patterns (Gilmore and Gomory 1961); bound L2 of Martello and Toth 1990 and Farley 1990',
  input: z.object({
    binCapacity: num(same, 'length of one stock bar'),
    sizes: list(same, 'lengths wanted'),
    kerf: optionalNum(same, 'width of a saw cut; default 0'),
  }),
  output: z.object({
    bins: z.array(z.array(z.number())).meta({ unit: same, description: 'lengths cut from each bar' }),
    count: num('1', 'bars'),
    lowerBound: num('1', 'no plan needs fewer'),
    proven: yes('count equals the bound: nothing better exists'),
  }),
  example: { binCapacity: 4800, sizes: [2300, 2300, 2080, 1370, 1370, 1030], kerf: 3 },
  run(row) {
    const { bins, count, lowerBound, proven } = cutStock(row);
    return { bins: bins.map((bar) => [...bar]), count, lowerBound, proven };
  },
  working(row, r) {
    const sum = row.sizes.reduce((total, size) => total + size, 0);
    return [
      `material: ${fig(sum)} over ${fig(row.binCapacity)}; no cutting needs fewer bars than: ${r.lowerBound}`,
      ...r.bins.map((bar, i) => `bar ${i + 1}: ${bar.map(fig).join(' + ')} = ${fig(bar.reduce((a, b) => a + b, 0))}`),
      r.proven ? `${r.count} bars reach the bound` : `${r.count} bars; not proven to be the fewest`,
    ];
  },
});
