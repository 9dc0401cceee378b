import type { TrunkPlan } from '../../trunks/types.ts';
import { abouts, trunkName } from '../abouts.ts';
import type { CheckContext } from '../context.ts';
import { riseMends } from '../riseMends.ts';
import { isWithin, type Judged, rule } from '../rule.ts';
import { showWithin } from '../showWithin.ts';

/** The region's share in volts between the terminals of the trunk's units. */
export function riseLimitV(trunk: TrunkPlan, share: number, nominalV: number): number {
  return trunk.rise.share > 0 ? (share * trunk.rise.totalV) / trunk.rise.share : share * nominalV;
}

/** Facts of the mains that nobody has measured. */
export function mainsNeeds({ facts: { supply } }: Pick<CheckContext, 'facts'>): readonly string[] {
  return (['lengthM', 'conductor'] as const)
    .filter((name) => supply.mains[name] === undefined)
    .map((name) => `facts.supply.mains.${name}`);
}

/**
 * Trunk rise: does the highest unit stay inside the region's limit for voltage rise?
 *
 * Judged at rated export, point of supply to the highest unit. With the mains unknown the rise stops at the board:
 * where that alone is too much it fails, else it asks. Mended by another feed drop or the next size of home run.
 */
export const trunkRise = rule({
  id: 'trunk-rise',
  sheet: '04',
  stops: true,
  question: 'Does the voltage rise to the highest unit stay inside the limit?',
  judge(context, limit) {
    return context.trunks.trunks
      .filter((trunk) => trunk.unitCount > 0)
      .map((trunk): Judged => {
        const about = abouts.trunk(trunk.id, trunk.name);
        const limitV = riseLimitV(trunk, limit.value, context.trunks.nominalV);
        const { totalV } = trunk.rise;
        const shown = showWithin(totalV, limitV, 'at most', 2);
        const where = trunk.drops.find((drop) => drop.number === trunk.farDrop)?.moduleNames[0];
        if (!trunk.mainsKnown && isWithin(totalV, limitV, 'at most')) {
          return {
            about,
            state: 'ask',
            title: `${trunkName(trunk.name)} rises ${shown.value} V to the board. The mains are not known.`,
            detail: `The limit is ${shown.limit} V to the point of supply.`,
            needs: mainsNeeds(context),
            working: trunk.riseWorking,
          };
        }
        const mainsNote = trunk.mainsKnown ? '' : ' The mains come on top.';
        return {
          about,
          title: `${trunkName(trunk.name)} rises ${shown.value} V${where === undefined ? '' : ` at ${where}`}. The limit is ${shown.limit} V.`,
          detail: `All ${trunk.unitCount} units at full export, fed at drop ${trunk.feedDrop}.${mainsNote}`,
          value: totalV,
          limit: limitV,
          unit: 'V',
          sense: 'at most',
          working: trunk.riseWorking,
          mends: riseMends(trunk, limitV, context),
        };
      });
  },
});
