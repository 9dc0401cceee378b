import { abouts, trunkName } from '../abouts.ts';
import { failingOrNearest } from '../failingOrNearest.ts';
import { type Judged, rule } from '../rule.ts';
import { showWithin } from '../showWithin.ts';

/** Drop reach: does every unit's lead reach its drop? */
export const dropReach = rule({
  id: 'drop-reach',
  sheet: '04',
  stops: true,
  question: 'Does every lead reach its drop?',
  judge({ trunks }) {
    return trunks.trunks.flatMap((trunk) => {
      const judged = trunk.drops.flatMap((drop): Judged[] => {
        if (drop.reach === undefined) return [];
        const { needMm, haveMm } = drop.reach;
        const shown = showWithin(needMm, haveMm, 'at most', 0);
        return [
          {
            about: { ...abouts.trunk(`${trunk.id}-${drop.number}`, trunk.name), kind: 'unit' },
            title: `Drop ${drop.number} of ${trunkName(trunk.name)} is ${shown.value} mm from its unit. The lead reaches ${shown.limit} mm.`,
            value: needMm,
            limit: haveMm,
            unit: 'mm',
            sense: 'at most',
            mends: [{ words: 'Splice a jumper in before it, or use every second drop and cap the rest.' }],
          },
        ];
      });
      return failingOrNearest(judged);
    });
  },
});
