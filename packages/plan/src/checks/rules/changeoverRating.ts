import { sheetOf } from '../../equipment.ts';
import { worked } from '../../working.ts';
import { abouts } from '../abouts.ts';
import { type Judged, rule } from '../rule.ts';
import { showWithin } from '../showWithin.ts';

/**
 * Changeover: does it suit the supply, keep enough lines, and carry what passes through it?
 *
 * A whole house passes its main. A part passes the larger of what runs on its fullest line and what the battery
 * gives to one line.
 */
export const changeoverRating = rule({
  id: 'changeover-rating',
  sheet: '06',
  stops: true,
  question: 'Does the changeover carry what passes through it?',
  judge({ choices, facts, backup, board }, limit): Judged[] {
    const choice = choices.backup;
    if (choice === undefined) return [];
    const about = abouts.backup('changeover', 'Changeover');
    const sheet = sheetOf(choices.equipment, choice.changeoverSheet, 'changeover');
    if (sheet.supply !== facts.supply.system) {
      return [
        {
          about,
          state: 'fails',
          title: `${sheet.name} is made for a ${sheet.supply} supply. This one is ${facts.supply.system}.`,
          mends: [{ words: `Choose a changeover for a ${facts.supply.system} supply.` }],
          seen: 'equipment sheet',
        },
      ];
    }
    if (choice.lines.length > sheet.backupLines) {
      return [
        {
          about,
          state: 'fails',
          title: `${sheet.name} keeps ${sheet.backupLines} lines. ${choice.lines.length} are asked of it.`,
          mends: [{ words: 'Keep fewer lines, or choose another changeover.' }],
          seen: 'equipment sheet',
        },
      ];
    }
    const runningA = Math.max(0, ...backup.byLine.map((line) => line.runningVA / facts.supply.nominalV));
    const batteryA = Math.max(
      0,
      ...board.circuits.filter((circuit) => circuit.kind === 'battery').map((circuit) => circuit.designA),
    );
    const mainA = facts.board.mainSwitchA ?? facts.supply.serviceA;
    const needA = choice.scope === 'whole' ? mainA : Math.max(runningA, batteryA);
    const shown = showWithin(sheet.ratedA, needA, 'at least', 0);
    return [
      {
        about,
        title: `${sheet.name} carries ${shown.value} A. ${shown.limit} A pass through it.`,
        value: sheet.ratedA,
        limit: needA,
        unit: 'A',
        sense: 'at least',
        working: worked(
          'Passes through the changeover',
          needA,
          'A',
          choice.scope === 'whole' ? 'the main of the house' : 'the larger of loads and battery, on one line',
          limit.clause,
          choice.scope === 'whole'
            ? [{ name: 'main', value: mainA, unit: 'A', source: 'survey' }]
            : [
                { name: 'loads', value: runningA, unit: 'A', source: 'survey' },
                { name: 'battery', value: batteryA, unit: 'A', source: 'battery sheet' },
              ],
        ),
        mends: [{ words: 'Choose a larger changeover, or back up a part.' }],
      },
    ];
  },
});
