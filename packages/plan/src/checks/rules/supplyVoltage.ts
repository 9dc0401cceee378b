import { capital } from '../abouts.ts';
import { failingOrNearest } from '../failingOrNearest.ts';
import { type Judged, rule } from '../rule.ts';
import { showWithin } from '../showWithin.ts';

/** Supply voltage: does every line read inside the region's band, before anything is fitted? */
export const supplyVoltage = rule({
  id: 'supply-voltage',
  sheet: '01',
  stops: false,
  question: 'Is the supply inside its band before anything is fitted?',
  judge({ facts: { supply }, pack }, { value: [below, above] }) {
    const read = (['L1', 'L2', 'L3'] as const).flatMap((line) => {
      const volts = supply.measuredV[line];
      return volts === undefined ? [] : [[line, volts] as const];
    });
    if (read.length === 0) {
      return [
        {
          about: { kind: 'site', id: 'supply', name: capital(pack.words.supply) },
          state: 'ask',
          title: 'Supply voltage not measured.',
          detail: 'Read every line at the board, with the hour.',
          needs: ['facts.supply.measuredV'],
        },
      ];
    }
    const judged = read.map(([line, volts]): Judged => {
      const high = volts >= supply.nominalV;
      const limit = supply.nominalV * (1 + (high ? above : below));
      const sense = high ? 'at most' : 'at least';
      const shown = showWithin(volts, limit, sense, 1);
      return {
        about: { kind: 'site', id: `supply-${line}`, name: line },
        title: `Supply reads ${shown.value} V on ${line}. The band ends at ${shown.limit} V.`,
        value: volts,
        limit,
        unit: 'V',
        sense,
        mends: [{ words: `Report it to the ${pack.words.network} and have it logged before anything is fitted.` }],
        working: {
          name: `Supply on ${line}`,
          value: volts,
          unit: 'V',
          source: 'survey',
          at: `facts.supply.measuredV.${line}`,
        },
      };
    });
    return failingOrNearest(judged);
  },
});
