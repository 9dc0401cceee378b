import type { About } from '../../finding.ts';
import { coldVocOf, moduleUnitPairs } from '../moduleUnitPairs.ts';
import { type Judged, rule } from '../rule.ts';
import { showWithin, signed } from '../showWithin.ts';

/**
 * Cold voltage: does the open-circuit voltage at the record low stay under the unit's d.c. maximum?
 *
 * The record low comes from the survey and from nowhere else: the coldest hour of a typical year and a mean minimum
 * are both warmer than the morning that breaks the unit.
 */
export const coldVoltage = rule({
  id: 'cold-voltage',
  sheet: '03',
  stops: true,
  question: 'Does the coldest morning stay under the unit’s d.c. maximum?',
  judge(context) {
    const lowC = context.facts.site.recordLowC;
    return moduleUnitPairs(context).map((pair): Judged => {
      const about: About = { kind: 'module', id: pair.id, name: `${pair.module.name} on ${pair.unit.name}` };
      if (lowC === undefined) {
        return {
          about,
          state: 'ask',
          title: 'What is the lowest temperature on record here?',
          detail: `${pair.unit.name} takes ${pair.unit.maxDcV} V. A typical year does not show the coldest morning.`,
          needs: ['facts.site.recordLowC'],
        };
      }
      const cold = coldVocOf(pair, lowC);
      const shown = showWithin(cold.volts, pair.unit.maxDcV, 'at most', 1);
      return {
        about,
        title: `${pair.module.name} gives ${shown.value} V at ${signed(lowC, 0)} °C. ${pair.unit.name} takes ${shown.limit} V.`,
        value: cold.volts,
        limit: pair.unit.maxDcV,
        unit: 'V',
        sense: 'at most',
        working: cold.working,
        mends: [{ words: 'Choose a unit for more volts, or a module with fewer cells.' }],
      };
    });
  },
});
