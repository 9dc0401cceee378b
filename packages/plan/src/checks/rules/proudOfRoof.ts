import { sheetOf } from '../../equipment.ts';
import { given, worked } from '../../working.ts';
import { abouts } from '../abouts.ts';
import { rule } from '../rule.ts';
import { showWithin } from '../showWithin.ts';

/** Height above the roof: gap and frame together under what planning lets by? */
export const proudOfRoof = rule({
  id: 'proud-of-roof',
  sheet: '03',
  stops: false,
  question: 'Do the modules stand low enough for planning?',
  judge({ array, choices }, limit) {
    if (choices.mounting === undefined || array.modules.length === 0) return [];
    const { gapUnderMm } = choices.mounting;
    const frameMm = Math.max(
      ...array.modules.map((module) => sheetOf(choices.equipment, module.sheetId, 'module').thicknessMm),
    );
    const value = gapUnderMm + frameMm;
    const shown = showWithin(value, limit.value, 'at most', 0);
    const fits = Math.floor(limit.value - frameMm);
    return [
      {
        about: abouts.job('mounting', 'Mounting'),
        title: `The glass stands ${shown.value} mm proud of the roof. ${shown.limit} mm is permitted.`,
        value,
        limit: limit.value,
        unit: 'mm',
        sense: 'at most',
        working: worked(
          'Glass above the roof',
          value,
          'mm',
          'gap under the frame + frame',
          'geometry',
          [
            given('gap under the frame', gapUnderMm, 'mm', 'choices.mounting.gapUnderMm'),
            worked('frame', frameMm, 'mm', 'the thickest of the modules', 'equipment sheets', []),
          ],
          { decimals: 0 },
        ),
        mends: [
          {
            words: `Choose ${fits} mm under the frame.`,
            value: fits + frameMm,
            changes: [{ path: ['choices', 'mounting', 'gapUnderMm'], value: fits }],
          },
          { words: 'Or ask for planning permission.' },
        ],
      },
    ];
  },
});
