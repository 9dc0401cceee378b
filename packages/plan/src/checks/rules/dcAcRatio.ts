import { sheetOf } from '../../equipment.ts';
import { worked } from '../../working.ts';
import { abouts } from '../abouts.ts';
import { rule } from '../rule.ts';
import { showWithin } from '../showWithin.ts';

/** Array over units: does the scheme's cap on the ratio hold? Σ P_stc / Σ S_unit. */
export const dcAcRatio = rule({
  id: 'dc-ac-ratio',
  sheet: '03',
  stops: false,
  question: 'Is the array within what the units may have behind them?',
  judge({ array, choices }, limit) {
    const ratedVA = Object.values(choices.units).reduce(
      (sum, unit) => sum + sheetOf(choices.equipment, unit.sheet, 'unit').ratedVA,
      0,
    );
    if (ratedVA === 0) return [];
    const value = array.stcW / ratedVA;
    const shown = showWithin(value, limit.value, 'at most', 2);
    return [
      {
        about: abouts.job('array', 'The array'),
        title: `The array is ${shown.value} times its units. ${shown.limit} is the most.`,
        value,
        limit: limit.value,
        unit: '',
        sense: 'at most',
        working: worked('Array over units', value, '', 'Σ P ÷ Σ S', 'equipment sheets', [
          { name: 'modules', value: array.stcW, unit: 'W', source: 'module sheets' },
          { name: 'units', value: ratedVA, unit: 'VA', source: 'unit sheets' },
        ]),
        mends: [{ words: 'Choose a larger unit, or a smaller module.' }],
      },
    ];
  },
});
