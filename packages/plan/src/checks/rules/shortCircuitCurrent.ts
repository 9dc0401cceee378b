import type { About } from '../../finding.ts';
import { given, worked } from '../../working.ts';
import { HOT_CELL_ABOVE_AIR_K, moduleUnitPairs } from '../moduleUnitPairs.ts';
import { type Judged, rule } from '../rule.ts';
import { showWithin } from '../showWithin.ts';

/** Short-circuit current: does a hot module under a bright cloud edge stay under the unit's input? Isc · (1 + α · ΔT) · factor. */
export const shortCircuitCurrent = rule({
  id: 'short-circuit-current',
  sheet: '03',
  stops: true,
  question: 'Does the module’s current stay under the unit’s input?',
  judge(context, limit) {
    const highC = context.facts.site.recordHighC;
    return moduleUnitPairs(context).map((pair): Judged => {
      const { module, unit } = pair;
      const about: About = { kind: 'module', id: pair.id, name: `${module.name} on ${unit.name}` };
      if (highC === undefined) {
        return {
          about,
          state: 'ask',
          title: `How hot does it get? The current of ${module.name} rises with it.`,
          needs: ['facts.site.recordHighC'],
        };
      }
      const cellC = highC + HOT_CELL_ABOVE_AIR_K;
      const value = module.iscA * (1 + (module.iscPctPerK / 100) * (cellC - 25)) * limit.value;
      const shown = showWithin(value, unit.maxIscA, 'at most', 1);
      const sheet = `choices.equipment.${pair.moduleSheetId}`;
      return {
        about,
        title: `${module.name} can push ${shown.value} A. ${unit.name} takes ${shown.limit} A.`,
        value,
        limit: unit.maxIscA,
        unit: 'A',
        sense: 'at most',
        working: worked(
          `${module.name}, short circuit`,
          value,
          'A',
          `I = Isc · (1 + α · (T + 30 − 25)) · ${limit.value}`,
          `${limit.clause}; cell 30 K above air, from memory`,
          [
            given('short circuit', module.iscA, 'A', `${sheet}.iscA`, 'module sheet'),
            given('its change', module.iscPctPerK, '%/K', `${sheet}.iscPctPerK`, 'module sheet'),
            given('record high', highC, '°C', 'facts.site.recordHighC', 'survey'),
          ],
          { decimals: 1 },
        ),
        mends: [{ words: 'Choose a unit for more current, or a smaller module.' }],
      };
    });
  },
});
