import { sheetOf } from '../equipment.ts';
import type { Mend } from '../finding.ts';
import type { TrunkPlan } from '../trunks/types.ts';
import { trunkName } from './abouts.ts';
import type { CheckContext } from './context.ts';
import { isWithin } from './rule.ts';

/** `fifth`. */
function ordinal(n: number): string {
  const words = ['first', 'second', 'third', 'fourth', 'fifth', 'sixth', 'seventh', 'eighth', 'ninth', 'tenth'];
  return words[n - 1] ?? `${n}th`;
}

/**
 * What would bring the rise of a trunk inside its limit, cheapest first.
 *
 * Another feed drop costs no copper; then the next size of home run at hand; then both. `addedV` is what the rise
 * judged has on top of the trunk's own figure (a battery in the mains): it stays as it is, for the currents do.
 */
export function riseMends(trunk: TrunkPlan, limitV: number, context: CheckContext, addedV = 0): readonly Mend[] {
  const hereV = trunk.rise.totalV;
  const inside = (volts: number) => isWithin(volts + addedV, limitV, 'at most');
  const feeds = [...trunk.feedOptions]
    .filter((option) => option.drop !== trunk.feedDrop)
    .sort((a, b) => a.totalV - b.totalV || Math.abs(a.drop - trunk.feedDrop) - Math.abs(b.drop - trunk.feedDrop));
  const sizes = [...trunk.sizeOptions]
    .filter((option) => option.totalV < hereV - 1e-12)
    .sort((a, b) => b.totalV - a.totalV);

  const feed = feeds[0];
  const feedMends = feed !== undefined && inside(feed.totalV) ? [feedMend(trunk, feed, addedV)] : [];
  const size = sizes.find((option) => inside(option.totalV));
  const sizeMends = size === undefined ? [] : [sizeMend(trunk, size, context, addedV)];
  if (feedMends.length + sizeMends.length > 0) return [...feedMends, ...sizeMends];

  const both = feed === undefined ? undefined : sizes.find((option) => inside(feed.totalV + option.totalV - hereV));
  if (feed !== undefined && both !== undefined) {
    const a = feedMend(trunk, feed, addedV);
    const b = sizeMend(trunk, both, context, addedV);
    return [
      {
        words: `${a.words.replace(/\.$/, '')} and ${b.words.charAt(0).toLowerCase()}${b.words.slice(1)}`,
        value: feed.totalV + both.totalV - hereV + addedV,
        changes: [...(a.changes ?? []), ...(b.changes ?? [])],
      },
    ];
  }
  return [{ words: `No feed place and no size at hand is enough: split ${trunkName(trunk.name)} in two.` }];
}

function feedMend(trunk: TrunkPlan, feed: TrunkPlan['feedOptions'][number], addedV: number): Mend {
  return {
    words: `Feed it at the ${ordinal(feed.drop)} drop.`,
    value: feed.totalV + addedV,
    changes: [{ path: ['choices', 'trunks', trunk.id, 'feedDrop'], value: feed.drop }],
  };
}

function sizeMend(
  trunk: TrunkPlan,
  size: TrunkPlan['sizeOptions'][number],
  { choices }: CheckContext,
  addedV: number,
): Mend {
  return {
    words: `Run the home run in ${sizeName(choices.equipment, size.cableSheetId)}.`,
    value: size.totalV + addedV,
    changes: [{ path: ['choices', 'trunks', trunk.id, 'homeRun', 'cableSheet'], value: size.cableSheetId }],
  };
}

/** `10 mm²` or `8 AWG`. */
export function sizeName(equipment: CheckContext['choices']['equipment'], cableSheetId: string): string {
  const { conductor } = sheetOf(equipment, cableSheetId, 'cable');
  return conductor.areaMm2 === undefined ? `${conductor.awg} AWG` : `${conductor.areaMm2} mm²`;
}
