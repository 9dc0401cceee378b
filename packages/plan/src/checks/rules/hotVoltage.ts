import type { About } from '../../finding.ts';
import { given, type Working, worked } from '../../working.ts';
import { HOT_CELL_ABOVE_AIR_K, moduleUnitPairs, type Pair } from '../moduleUnitPairs.ts';
import { type Judged, rule } from '../rule.ts';
import { showWithin } from '../showWithin.ts';

/** Voc falls by about 2.7 % for each halving of the light; ten times less light is 3.32 halvings (worked out, ideality 1.1). */
const TENTH_OF_THE_SUN = 1 - 0.027 * Math.log2(10);

/**
 * Hot voltage: does the unit still track on the hottest day, and does it start on a hot dull one?
 *
 *     Vmp = Vmp,stc · (1 + γ · (T_air + 30 − 25)), at least the lower end of tracking
 *     Voc at a tenth of the sun and T_air + 3, at least the start voltage
 *
 * γ of the power stands for that of Vmp, a little larger than it: the figure is low, on the safe side.
 */
export const hotVoltage = rule({
  id: 'hot-voltage',
  sheet: '03',
  stops: true,
  question: 'Does the unit track and start on the hottest day?',
  judge(context) {
    const highC = context.facts.site.recordHighC;
    return moduleUnitPairs(context).flatMap((pair): Judged[] => {
      const about = (id: string): About => ({
        kind: 'module',
        id: `${pair.id}${id}`,
        name: `${pair.module.name} on ${pair.unit.name}`,
      });
      if (highC === undefined) {
        return [
          {
            about: about(''),
            state: 'ask',
            title: 'What is the highest temperature on record here?',
            detail: `${pair.unit.name} tracks from ${pair.unit.trackingLowV} V.`,
            needs: ['facts.site.recordHighC'],
          },
        ];
      }
      const hot = hotVmp(pair, highC);
      const start = hotStart(pair, highC);
      const shown = showWithin(Number(hot.value), pair.unit.trackingLowV, 'at least', 1);
      const shownStart = showWithin(Number(start.value), pair.unit.startV, 'at least', 1);
      return [
        {
          about: about(''),
          title: `${pair.module.name} works at ${shown.value} V when hottest. ${pair.unit.name} tracks from ${shown.limit} V.`,
          value: Number(hot.value),
          limit: pair.unit.trackingLowV,
          unit: 'V',
          sense: 'at least',
          working: hot,
          mends: [{ words: 'Choose a unit that tracks lower, or a module with more cells.' }],
        },
        {
          about: about('-start'),
          title: `${pair.module.name} gives ${shownStart.value} V under a tenth of the sun. ${pair.unit.name} starts at ${shownStart.limit} V.`,
          value: Number(start.value),
          limit: pair.unit.startV,
          unit: 'V',
          sense: 'at least',
          working: start,
          mends: [{ words: 'Choose a unit that starts lower, or a module with more cells.' }],
        },
      ];
    });
  },
});

function hotVmp({ module, moduleSheetId }: Pair, highC: number): Working {
  const cellC = highC + HOT_CELL_ABOVE_AIR_K;
  const sheet = `choices.equipment.${moduleSheetId}`;
  return worked(
    `${module.name}, hottest`,
    module.vmpV * (1 + (module.pmpPctPerK / 100) * (cellC - 25)),
    'V',
    'V = Vmp · (1 + γ · (T + 30 − 25))',
    'module sheet; cell 30 K above air, Ross coefficient from memory',
    [
      given('at its best point', module.vmpV, 'V', `${sheet}.vmpV`, 'module sheet'),
      given('change of its power', module.pmpPctPerK, '%/K', `${sheet}.pmpPctPerK`, 'module sheet'),
      given('record high', highC, '°C', 'facts.site.recordHighC', 'survey'),
    ],
    { decimals: 1 },
  );
}

function hotStart({ module, moduleSheetId }: Pair, highC: number): Working {
  const cellC = highC + HOT_CELL_ABOVE_AIR_K / 10;
  const sheet = `choices.equipment.${moduleSheetId}`;
  return worked(
    `${module.name}, hot and dull`,
    module.vocV * (1 + (module.vocPctPerK / 100) * (cellC - 25)) * TENTH_OF_THE_SUN,
    'V',
    'V = Voc · (1 + β · (T + 3 − 25)) · 0.91',
    'module sheet; 2.7 % less for each halving of the light, worked out with ideality 1.1',
    [
      given('open circuit', module.vocV, 'V', `${sheet}.vocV`, 'module sheet'),
      given('its change', module.vocPctPerK, '%/K', `${sheet}.vocPctPerK`, 'module sheet'),
      given('record high', highC, '°C', 'facts.site.recordHighC', 'survey'),
    ],
    { decimals: 1 },
  );
}
