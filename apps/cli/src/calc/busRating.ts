import { necBusbar, sumOfSources } from '@eaveline/physics';
import { z } from 'zod';
import { defineCalc } from './calc.ts';
import { fig, list, num, numOrNull, optionalNum, yes } from './fields.ts';

const nec = {
  busbarA: num('A', 'rating of the bar'),
  mainBreakerA: num('A', 'of the device that protects the bar'),
  inverterOutputCurrentA: num('A', 'all sources on this bar, rated continuous output'),
  sumOfAllLoadAndSourceBreakersExcludingMainA: optionalNum('A', 'for `sum of breakers`'),
};
const input = z.discriminatedUnion('option', [
  z.object({ option: z.literal(['sum', '120 percent opposite ends', 'centre fed', 'sum of breakers']), ...nec }),
  z.object({
    option: z.literal('sum of sources'),
    busRatingA: num('A', 'rating of the bar'),
    sourcesA: list('A', 'rating of the device of each source, the network’s included'),
  }),
]);

export const busRatingCalc = defineCalc({
  name: 'bus-rating',
  line: 'whether a bar may be fed from more than one side',
  source: 'NEC 705.12(B) (first option seen in public text, the rest from memory); BS 7671 551.7 (from memory)',
  input,
  output: z.object({
    comparedA: num('A', 'what is compared'),
    limitA: num('A', 'with what'),
    allowed: yes('compared ≤ limit'),
    largestInverterCurrentA: numOrNull('A', 'most this option lets in; null where it does not depend on it'),
  }),
  example: { option: '120 percent opposite ends', busbarA: 200, mainBreakerA: 200, inverterOutputCurrentA: 32 },
  run(row) {
    const found = row.option === 'sum of sources' ? sumOfSources(row.busRatingA, row.sourcesA) : necBusbar(row);
    return { ...found, largestInverterCurrentA: found.largestInverterCurrentA ?? null };
  },
  working(row, r) {
    const verdict = `${fig(r.comparedA)} A against ${fig(r.limitA)} A: ${r.allowed ? 'allowed' : 'not allowed'}`;
    if (row.option === 'sum of sources') return ['Σ ratings of the sources ≤ rating of the bar', verdict];
    if (row.option === 'sum of breakers') return ['Σ all breakers but the main ≤ rating of the bar', verdict];
    const share = row.option === 'sum' ? '' : '1.2 · ';
    return [
      `1.25·I + main = 1.25 · ${fig(row.inverterOutputCurrentA)} + ${fig(row.mainBreakerA)} ≤ ${share}${fig(row.busbarA)}`,
      verdict,
      ...(r.largestInverterCurrentA === null
        ? []
        : [`most inverter current: (limit − main)/1.25 = ${fig(r.largestInverterCurrentA)} A`]),
    ];
  },
});
