import { sheetOf } from '../../equipment.ts';
import { worked } from '../../working.ts';
import { failingOrNearest } from '../failingOrNearest.ts';
import { type Judged, rule } from '../rule.ts';
import { against } from '../units.ts';

/**
 * Rail stress: does each rail bend within what its sheet allows?
 *
 * The sheet's stress is for a design load. Where the region's method gives loads of another level it asks.
 */
export const railStress = rule({
  id: 'rail-stress',
  sheet: '03',
  stops: true,
  question: 'Do the rails bend within what their sheet allows?',
  judge({ structure, array, choices }, { clause }) {
    if (choices.mounting === undefined || array.rails.length === 0) return [];
    const sheet = sheetOf(choices.equipment, choices.mounting.railSheet, 'rail');
    const at = `choices.equipment.${choices.mounting.railSheet}`;
    const about = { kind: 'rail' as const, id: 'rails', name: 'Rails' };
    const known = structure.rails.filter(({ stressMPa }) => stressMPa !== undefined);
    if (known.length === 0) {
      return [{ about, state: 'ask', title: 'Bending of the rails: not worked out yet.', needs: structure.missing }];
    }
    if (structure.level !== 'design') {
      return [
        {
          about,
          state: 'ask',
          title: `The load is of the ${structure.level} level, the rail’s stress of the design level. What does the rail take at that level?`,
          needs: [`${at}.designStressMPa`],
        },
      ];
    }
    return failingOrNearest(
      known.map(({ railId, stressMPa = 0, longestSpanM }): Judged => {
        const name = array.rails.find(({ id }) => id === railId)?.name ?? railId;
        const { shown, ...measured } = against(stressMPa, 'at most', sheet.designStressMPa, 'MPa');
        return {
          about: { kind: 'rail', id: railId, name: `Rail ${name}` },
          ...measured,
          title: `Rail ${name} bends with ${shown.value}. ${sheet.name} takes ${shown.limit}.`,
          working: worked('Bending stress', stressMPa, 'MPa', 'σ = M ÷ W', clause, [
            { name: 'longest span', value: longestSpanM, unit: 'm', source: 'feet of the rail' },
          ]),
          mends: [{ words: 'Set the feet closer together, or take a stiffer rail.' }],
        };
      }),
    );
  },
});
