import { sheetOf } from '../../equipment.ts';
import { worked } from '../../working.ts';
import { failingOrNearest } from '../failingOrNearest.ts';
import { type Judged, rule } from '../rule.ts';
import { against, shown } from '../units.ts';

/**
 * Rail stress: does each rail bend within what its sheet allows?
 *
 * The sheet's stress is for a design load. Where the region's method gives loads of another level it asks,
 * and a licensed person's word answers.
 */
export const railStress = rule({
  id: 'rail-stress',
  sheet: '03',
  stops: true,
  question: 'Do the rails bend within what their sheet allows?',
  judge({ structure, array, choices, confirmed }, { clause }) {
    if (choices.mounting === undefined || array.rails.length === 0) return [];
    const sheet = sheetOf(choices.equipment, choices.mounting.railSheet, 'rail');
    const about = { kind: 'rail' as const, id: 'rails', name: 'Rails' };
    const known = structure.rails.filter(({ stressMPa }) => stressMPa !== undefined);
    if (known.length === 0) {
      return [{ about, state: 'ask', title: 'Bending of the rails: not worked out yet.', needs: structure.missing }];
    }
    if (structure.level !== 'design') {
      const most = shown(Math.max(...known.map(({ stressMPa = 0 }) => stressMPa)), 'MPa');
      if (confirmed('rail-stress')) {
        return [
          {
            about,
            state: 'meets',
            title: `The rails bend with ${most}. A licensed person’s word: they hold.`,
            seen: 'job',
          },
        ];
      }
      return [
        {
          about,
          state: 'ask',
          title: `The rails bend with ${most} at the ${structure.level} level. ${sheet.name} takes ${shown(sheet.designStressMPa, 'MPa')} at the design level. Does it hold?`,
          detail: 'Figures of two levels may not be set against each other. A licensed person’s word answers.',
          needs: ['choices.confirmations'],
        },
      ];
    }
    return failingOrNearest(
      known.map(({ railId, stressMPa = 0, longestSpanM }): Judged => {
        const name = array.rails.find(({ id }) => id === railId)?.name ?? railId;
        const { shown: text, ...measured } = against(stressMPa, 'at most', sheet.designStressMPa, 'MPa');
        return {
          about: { kind: 'rail', id: railId, name: `Rail ${name}` },
          ...measured,
          title: `Rail ${name} bends with ${text.value}. ${sheet.name} takes ${text.limit}.`,
          working: worked('Bending stress', stressMPa, 'MPa', 'σ = M ÷ W', clause, [
            { name: 'longest span', value: longestSpanM, unit: 'm', source: 'feet of the rail' },
          ]),
          mends: [{ words: 'Set the feet closer together, or take a stiffer rail.' }],
        };
      }),
    );
  },
});
