import type { Drop, TrunkPlan } from '../../trunks/types.ts';
import { given, worked } from '../../working.ts';
import { abouts, trunkName } from '../abouts.ts';
import type { CheckContext } from '../context.ts';
import { failingOrNearest } from '../failingOrNearest.ts';
import { type Judged, rule } from '../rule.ts';
import { showWithin } from '../showWithin.ts';

/** Drop reach: does every unit's lead reach its drop? */
export const dropReach = rule({
  id: 'drop-reach',
  sheet: '04',
  stops: true,
  question: 'Does every lead reach its drop?',
  judge({ trunks, choices }) {
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
            working: reachWorking(trunk, drop, drop.reach, choices.units),
            mends: [{ words: 'Splice a jumper in before it, or use every second drop and cap the rest.' }],
          },
        ];
      });
      return failingOrNearest(judged);
    });
  },
});

/** The drop and its neighbours: where it is short, the spans beside it are shorter than the units stand apart. */
function reachWorking(
  trunk: TrunkPlan,
  { number, unitId = '' }: Drop,
  { needMm, haveMm }: NonNullable<Drop['reach']>,
  units: CheckContext['choices']['units'],
) {
  const beside = trunk.spans.filter(({ fromDrop, toDrop }) => fromDrop === number || toDrop === number);
  return worked(
    `Drop ${number} of ${trunkName(trunk.name)} to its unit`,
    needMm,
    'mm',
    'where spans are shorter than their units stand apart, half of their greatest sum, or what is left of it here',
    'geometry, the trunk laid as well as it can be',
    [
      ...beside.map(({ fromDrop, toDrop, lengthM }) =>
        worked(`cable, drop ${fromDrop} to ${toDrop}`, 1000 * lengthM, 'mm', 'pitch, and jumper', 'the job', [], {
          decimals: 0,
        }),
      ),
      given('lead reaches', haveMm, 'mm', `choices.equipment.${units[unitId]?.sheet}.dropReachMm`, 'equipment sheet'),
    ],
    { decimals: 0 },
  );
}
