import { sheetOf } from '../../equipment.ts';
import type { Mend } from '../../finding.ts';
import { sizeName } from '../../trunks/ohmPerMetre.ts';
import type { TrunkPlan } from '../../trunks/types.ts';
import { abouts } from '../abouts.ts';
import type { CheckContext } from '../context.ts';
import { isWithin, type Judged, rule } from '../rule.ts';
import { against } from '../units.ts';

/**
 * Trunk rise: does the highest unit stay inside the region's limit for voltage rise?
 *
 * Judged at rated export, from the highest unit to the point of supply. Mended by the feed drop with the least rise,
 * and by the smallest home run at hand that brings the whole inside the limit.
 */
export const trunkRise = rule({
  id: 'trunk-rise',
  question: 'Does the highest unit of each trunk stay inside the limit for voltage rise?',
  sheet: '04',
  stops: true,
  judge: (context, limit) => context.trunks.trunks.map((trunk) => judgeTrunk(trunk, limit.value, context)),
});

function judgeTrunk(trunk: TrunkPlan, limitShare: number, context: CheckContext): Judged {
  const about = abouts.trunk(trunk.id, trunk.name);
  const { shown, ...measured } = against(trunk.rise.totalV, 'at most', limitShare * riseBaseV(trunk, context), 'V');
  const meets = isWithin(measured.value, measured.limit, 'at most');
  const working = trunk.riseWorking;
  if (!trunk.mainsKnown && meets) {
    return {
      about,
      state: 'ask',
      title: `${about.name} rises ${shown.value} up to the board. How long and how thick are the mains?`,
      detail: `The limit is ${shown.limit}, mains included.`,
      needs: mainsNeeds(context),
      working,
    };
  }
  return {
    about,
    ...measured,
    title: `${about.name} rises ${shown.value}. The limit is ${shown.limit}.`,
    ...(trunk.mainsKnown ? {} : { detail: 'The mains are not known and add to it.' }),
    working,
    mends: meets ? [] : riseMends(trunk, measured.limit, context),
  };
}

/** Volts the limit is a share of: nominal between the terminals of the units, as the trunk stage took it. */
export function riseBaseV({ rise }: TrunkPlan, { trunks }: Pick<CheckContext, 'trunks'>): number {
  return rise.share > 0 ? rise.totalV / rise.share : trunks.nominalV;
}

/** Facts of the mains that the survey did not bring. */
export function mainsNeeds({ facts }: Pick<CheckContext, 'facts'>): readonly string[] {
  const { lengthM, conductor } = facts.supply.mains;
  return [
    ...(lengthM === undefined ? ['facts.supply.mains.lengthM'] : []),
    ...(conductor === undefined ? ['facts.supply.mains.conductor'] : []),
  ];
}

function riseMends(trunk: TrunkPlan, limitV: number, context: CheckContext): readonly Mend[] {
  if (!trunk.mainsKnown) return [{ words: 'Measure the mains first: they decide how much the run has to lose.' }];
  const mends = [...feedMend(trunk, limitV), ...sizeMend(trunk, limitV, context)];
  return mends.length > 0 ? mends : [{ words: 'No feed drop and no home run at hand is enough: split it in two.' }];
}

function feedMend(trunk: TrunkPlan, limitV: number): readonly Mend[] {
  const best = [...trunk.feedOptions].sort((a, b) => a.totalV - b.totalV || a.drop - b.drop)[0];
  if (best === undefined || best.drop === trunk.feedDrop || !isWithin(best.totalV, limitV, 'at most')) return [];
  return [
    {
      words: `Feed it at drop ${best.drop}.`,
      value: best.totalV,
      changes: [{ path: ['choices', 'trunks', trunk.id, 'feedDrop'], value: best.drop }],
    },
  ];
}

function sizeMend(trunk: TrunkPlan, limitV: number, { choices }: CheckContext): readonly Mend[] {
  const fit = trunk.sizeOptions.find(({ totalV }) => isWithin(totalV, limitV, 'at most'));
  if (fit === undefined) return [];
  const { conductor } = sheetOf(choices.equipment, fit.cableSheetId, 'cable');
  return [
    {
      words: `Lay ${sizeName(conductor)} as its home run.`,
      value: fit.totalV,
      changes: [{ path: ['choices', 'trunks', trunk.id, 'homeRun', 'cableSheet'], value: fit.cableSheetId }],
    },
  ];
}
