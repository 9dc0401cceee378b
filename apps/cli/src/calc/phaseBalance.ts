import { phaseBalance } from '@eaveline/physics';
import { z } from 'zod';
import { defineCalc } from './calc.ts';
import { fig, list, num, optionalNum, yes } from './fields.ts';

export const phaseBalanceCalc = defineCalc({
  name: 'phase-balance',
  line: 'output on each line, the largest difference against its limit, and the neutral',
  source: 'AS/NZS 4777.1:2016, 5 kVA between phases; the neutral by phasors',
  input: z.object({
    moduleInvertersOnABC: list('1', 'units on A, B and C'),
    ratingVaEach: num('VA', 'of one unit'),
    limitVa: num('VA', 'largest allowed difference'),
    phaseV: optionalNum('V', 'default 230'),
  }),
  output: z.object({
    phaseVa: list('VA', 'on A, B and C'),
    largestDifferenceVa: num('VA', 'between two lines'),
    allowed: yes('within the limit'),
    phaseCurrentA: list('A', 'on A, B and C'),
    neutralCurrentA: num('A', 'at full output without load'),
  }),
  example: { moduleInvertersOnABC: [7, 7, 6], ratingVaEach: 366, limitVa: 5000 },
  run(row) {
    const found = phaseBalance(row);
    return { ...found, phaseVa: [...found.phaseVa], phaseCurrentA: [...found.phaseCurrentA] };
  },
  working: (row, r) => [
    `S = n · ${fig(row.ratingVaEach)}: ${r.phaseVa.map(fig).join(', ')} VA; largest difference ${fig(r.largestDifferenceVa)} VA of ${fig(row.limitVa)} VA`,
    `In = √(a² + b² + c² − ab − bc − ca) of ${r.phaseCurrentA.map(fig).join(', ')} A = ${fig(r.neutralCurrentA)} A`,
  ],
});
