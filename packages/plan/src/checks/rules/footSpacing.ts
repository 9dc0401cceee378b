import { abouts } from '../abouts.ts';
import { failingOrNearest } from '../failingOrNearest.ts';
import { type Judged, rule } from '../rule.ts';
import { showWithin } from '../showWithin.ts';

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
        const value = 1000 * Math.max(...u.slice(1).map((right, k) => right - (u[k] ?? right)));
        const shown = showWithin(value, limit, 'at most', 0);
        return [
          {
            about: { kind: 'rail', id: rail.id, name: rail.name },
            title: `${rail.name} spans ${shown.value} mm between feet. ${shown.limit} mm is the most.`,
            value,
            limit,
            unit: 'mm',
            sense: 'at most',
            mends: [{ words: 'Add a foot on the rafter between.' }],
          },
        ];
      }),
    );
  },
});
