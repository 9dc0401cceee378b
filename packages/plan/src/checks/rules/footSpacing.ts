import { given, worked } from '../../working.ts';
import { abouts } from '../abouts.ts';
import { failingOrNearest } from '../failingOrNearest.ts';
import { type Judged, rule } from '../rule.ts';
import { showWithin } from '../showWithin.ts';

const FROM_EAVE_END = 'from the left end of the eave';

/** Foot spacing: does every span stay inside the spacing chosen for this job? */
export const footSpacing = rule({
  id: 'foot-spacing',
  sheet: '03',
  stops: true,
  question: 'Do the feet keep the spacing chosen?',
  judge({ array, choices }) {
    if (array.modules.length === 0) return [];
    if (choices.mounting === undefined) {
      return [
        {
          about: abouts.job('mounting', 'Mounting'),
          state: 'ask',
          title: 'Which rails, clamps and feet?',
          needs: ['choices.mounting'],
        },
      ];
    }
    const limit = choices.mounting.footSpacingMm;
    return failingOrNearest(
      array.rails.flatMap((rail): Judged[] => {
        const u = rail.feet.map((foot) => foot.u).sort((a, b) => a - b);
        if (u.length < 2) return [];
        const spansMm = u.slice(1).map((right, k) => 1000 * (right - (u[k] ?? right)));
        const value = Math.max(...spansMm);
        const widest = spansMm.indexOf(value);
        const shown = showWithin(value, limit, 'at most', 0);
        return [
          {
            about: { kind: 'rail', id: rail.id, name: rail.name },
            title: `${rail.name} spans ${shown.value} mm between feet. ${shown.limit} mm is the most.`,
            value,
            limit,
            unit: 'mm',
            sense: 'at most',
            working: worked(
              `${rail.name}, widest span`,
              value,
              'mm',
              `foot ${widest + 2} − foot ${widest + 1}, along the eave`,
              'the drawing',
              [
                worked(`foot ${widest + 1}`, 1000 * (u[widest] as number), 'mm', FROM_EAVE_END, 'the drawing', [], {
                  decimals: 0,
                }),
                worked(`foot ${widest + 2}`, 1000 * (u[widest + 1] as number), 'mm', FROM_EAVE_END, 'the drawing', [], {
                  decimals: 0,
                }),
                given('spacing chosen', limit, 'mm', 'choices.mounting.footSpacingMm'),
              ],
              { decimals: 0 },
            ),
            mends: [{ words: 'Add a foot on the rafter between.' }],
          },
        ];
      }),
    );
  },
});
