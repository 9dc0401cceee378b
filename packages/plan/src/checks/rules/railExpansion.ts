import { EXPANSION_GAP_MM, railRuns } from '../../array/railRuns.ts';
import type { Rail } from '../../array/types.ts';
import { sheetOf } from '../../equipment.ts';
import { given, worked } from '../../working.ts';
import { plural } from '../abouts.ts';
import { failingOrNearest } from '../failingOrNearest.ts';
import { type Judged, rule } from '../rule.ts';
import { showWithin } from '../showWithin.ts';

/**
 * Rail expansion: may every stretch of rail grow with the heat, between breaks?
 *
 * A rail that is longer than its sheet allows is broken where a gap between modules lets it, as the kit counts it.
 * Judged is the longest stretch that stays whole. A sheet that gives no longest run is asked about.
 */
export const railExpansion = rule({
  id: 'rail-expansion',
  sheet: '03',
  stops: true,
  question: 'Is every rail broken often enough to grow with the heat?',
  judge({ array, choices }) {
    // without rails chosen there is no sheet to go by: the spacing of the feet asks for them
    if (choices.mounting === undefined || array.rails.length === 0) return [];
    const { railSheet } = choices.mounting;
    const { name, longestRunMm } = sheetOf(choices.equipment, railSheet, 'rail');
    const at = `choices.equipment.${railSheet}.longestRunMm`;
    if (longestRunMm === undefined) {
      const longestM = Math.max(...array.rails.map(({ lengthMm }) => lengthMm)) / 1000;
      return [
        {
          about: { kind: 'rail', id: railSheet, name },
          state: 'ask',
          title: `How long may ${name} run without an expansion break? Its longest here is ${longestM.toFixed(2)} m.`,
          detail: 'Its sheet does not say. Around 12 m is common practice, no source.',
          needs: [at],
        },
      ];
    }
    return failingOrNearest(array.rails.map((rail) => judgeRail(rail, longestRunMm, at)));
  },
});

function judgeRail(rail: Rail, longestRunMm: number, at: string): Judged {
  const { runs, breaksAtMm } = railRuns(rail, longestRunMm);
  const value = Math.max(...runs.map(({ fromMm, toMm }) => toMm - fromMm)) / 1000;
  const limit = longestRunMm / 1000;
  const shown = showWithin(value, limit, 'at most', 2);
  const breaks = breaksAtMm.length;
  return {
    about: { kind: 'rail', id: rail.id, name: rail.name },
    title: `${rail.name} runs ${shown.value} m ${breaks === 0 ? 'in one' : 'between breaks'}. Its sheet allows ${shown.limit} m.`,
    ...(breaks === 0 ? {} : { detail: brokenAt(breaksAtMm) }),
    value,
    limit,
    unit: 'm',
    sense: 'at most',
    working: worked(`${rail.name}, longest stretch`, value, 'm', 'length between the breaks', 'the drawing', [
      { name: 'whole rail', value: Math.round(rail.lengthMm) / 1000, unit: 'm', source: 'the drawing' },
      { name: 'expansion breaks', value: breaks, unit: '', source: 'the kit' },
    ]),
    limitWorking: worked('Longest run of the sheet', limit, 'm', 'mm ÷ 1000', 'equipment sheet', [
      given('longest run', longestRunMm, 'mm', at, 'equipment sheet'),
    ]),
    mends: [
      {
        words: `Break the rail with an expansion splice: leave ${EXPANSION_GAP_MM} mm between two modules in its middle.`,
      },
    ],
  };
}

function brokenAt(atMm: readonly number[]): string {
  const places = atMm.map((at) => (at / 1000).toFixed(2)).join(' and ');
  return `Broken ${places} m from its left end (${plural(atMm.length, 'expansion splice')}): the row has to be ${atMm.length * EXPANSION_GAP_MM} mm longer for it, which the drawing does not show yet.`;
}
