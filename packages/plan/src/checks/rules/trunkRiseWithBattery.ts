import { abouts, trunkName } from '../abouts.ts';
import { riseMends } from '../riseMends.ts';
import { isWithin, type Judged, rule } from '../rule.ts';
import { showWithin } from '../showWithin.ts';
import { mainsNeeds, riseLimitV, riseLimitWorking } from './trunkRise.ts';

/** Trunk rise with every battery giving at its rating too: the second, larger case. */
export const trunkRiseWithBattery = rule({
  id: 'trunk-rise-with-battery',
  sheet: '04',
  stops: true,
  question: 'Does the rise stay inside the limit with the battery giving too?',
  judge(context, limit) {
    return context.trunks.trunks.flatMap((trunk): Judged[] => {
      if (trunk.riseWithBattery === undefined || trunk.unitCount === 0) return [];
      const { totalV, working } = trunk.riseWithBattery;
      const about = abouts.trunk(trunk.id, trunk.name);
      const limitV = riseLimitV(trunk, limit.value);
      const shown = showWithin(totalV, limitV, 'at most', 2);
      if (!trunk.mainsKnown && isWithin(totalV, limitV, 'at most')) {
        return [
          {
            about,
            state: 'ask',
            title: `${trunkName(trunk.name)} with the battery giving: the mains are not known.`,
            needs: mainsNeeds(context),
            working,
          },
        ];
      }
      return [
        {
          about,
          title: `${trunkName(trunk.name)} rises ${shown.value} V with the battery giving too. The limit is ${shown.limit} V.`,
          value: totalV,
          limit: limitV,
          unit: 'V',
          sense: 'at most',
          working,
          limitWorking: riseLimitWorking(trunk, limit),
          mends: riseMends(trunk, limitV, context, totalV - trunk.rise.totalV),
        },
      ];
    });
  },
});
