import type { Limit } from '../../rules/limit.ts';
import type { TrunkPlan } from '../../trunks/types.ts';
import { type Working, worked } from '../../working.ts';
import { abouts, trunkName } from '../abouts.ts';
import type { CheckContext } from '../context.ts';
import { riseMends } from '../riseMends.ts';
import { isWithin, type Judged, rule } from '../rule.ts';
import { showWithin } from '../showWithin.ts';

/**
 * The region's share in volts between the terminals of the trunk's units, V.
 *
 * Shares are told in percent to four decimals at most. As whole millionths they multiply without the tail that 0.02
 * has in binary: 2 % of 230 V is 4.6 V, not 4.6000000000000005 V.
 */
export function riseLimitV({ terminalV }: Pick<TrunkPlan, 'terminalV'>, share: number): number {
  return (Math.round(1e6 * share) * terminalV) / 1e6;
}

/** How that limit came about. */
export function riseLimitWorking(trunk: TrunkPlan, { value: share, clause }: Limit): Working {
  return worked('Most it may rise', riseLimitV(trunk, share), 'V', 'share · nominal', clause, [
    { name: 'share', value: share, unit: '', source: clause },
    { name: 'nominal between its terminals', value: trunk.terminalV, unit: 'V', source: 'the supply' },
  ]);
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
        const limitV = riseLimitV(trunk, limit.value);
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
          limitWorking: riseLimitWorking(trunk, limit),
          mends: riseMends(trunk, limitV, context),
        };
      });
  },
});
