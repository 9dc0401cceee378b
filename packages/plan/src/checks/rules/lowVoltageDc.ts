import type { About } from '../../finding.ts';
import { coldVocOf, moduleUnitPairs } from '../moduleUnitPairs.ts';
import { type Judged, rule } from '../rule.ts';
import { showWithin } from '../showWithin.ts';

/** Low voltage d.c.: does one module at the record low keep the promise of the unit-per-module case? */
export const lowVoltageDc = rule({
  id: 'low-voltage-dc',
  sheet: '03',
  stops: true,
  question: 'Does the d.c. side keep the promise of a unit per module?',
  judge(context, limit) {
    const lowC = context.facts.site.recordLowC;
    return moduleUnitPairs(context).map((pair): Judged => {
      const about: About = { kind: 'module', id: pair.id, name: `${pair.module.name} on ${pair.unit.name}` };
      if (lowC === undefined) {
        return {
          about,
          state: 'ask',
          title: `Does ${pair.module.name} stay under ${limit.value} V on the coldest morning?`,
          needs: ['facts.site.recordLowC'],
        };
      }
      const cold = coldVocOf(pair, lowC);
      const shown = showWithin(cold.volts, limit.value, 'at most', 1);
      return {
        about,
        title: `${shown.value} V d.c. at the module. ${shown.limit} V is the edge of the simpler case.`,
        value: cold.volts,
        limit: limit.value,
        unit: 'V',
        sense: 'at most',
        working: cold.working,
        mends: [{ words: 'Choose a module with fewer cells in series.' }],
      };
    });
  },
});
