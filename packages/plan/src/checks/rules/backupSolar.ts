import { sheetOf } from '../../equipment.ts';
import type { Mend } from '../../finding.ts';
import { worked } from '../../working.ts';
import { abouts, trunkName } from '../abouts.ts';
import type { CheckContext } from '../context.ts';
import { isWithin, rule } from '../rule.ts';
import { showWithin } from '../showWithin.ts';

/** Solar on the backed-up side: little enough for the battery to hold back? Σ S_solar ÷ S_battery. */
export const backupSolar = rule({
  id: 'backup-solar',
  sheet: '06',
  stops: false,
  question: 'Can the battery hold back the sun in an island?',
  judge(context, limit) {
    const { backup, choices } = context;
    if (!backup.present || backup.solarShare === undefined || backup.solarOnBackupVA === 0) return [];
    const sheets = Object.values(choices.batteries).map((battery) =>
      sheetOf(choices.equipment, battery.sheet, 'battery'),
    );
    const bySheet = sheets.flatMap((sheet) => (sheet.solarShareMax === undefined ? [] : [sheet.solarShareMax]));
    const most = bySheet.length > 0 ? Math.min(...bySheet) : limit.value;
    const ratedVA = backup.solarOnBackupVA / backup.solarShare;
    const shown = showWithin(backup.solarShare, most, 'at most', 2);
    return [
      {
        about: abouts.backup('solar', 'Solar on the backed-up side'),
        title: `Solar in an island is ${shown.value} times the battery. ${shown.limit} times is the most.`,
        value: backup.solarShare,
        limit: most,
        unit: '',
        sense: 'at most',
        seen: bySheet.length > 0 ? 'equipment sheet' : limit.seen,
        working: worked('Solar over battery', backup.solarShare, '', 'Σ S_solar ÷ S_battery', limit.clause, [
          { name: 'solar on the backed-up side', value: backup.solarOnBackupVA, unit: 'VA', source: 'unit sheets' },
          { name: 'battery', value: ratedVA, unit: 'VA', source: 'battery sheet' },
        ]),
        mends: [trunkOff(context, ratedVA, most)],
      },
    ];
  },
});

/** The trunk whose move to the grid's side leaves most sun behind and is enough. */
function trunkOff({ trunks, choices, backup }: CheckContext, ratedVA: number, most: number): Mend {
  const trunk = trunks.trunks
    .filter((each) => choices.backup?.trunks[each.id] === true)
    .map((each) => ({ ...each, share: (backup.solarOnBackupVA - each.ratedVA) / ratedVA }))
    .filter((each) => isWithin(each.share, most, 'at most'))
    .sort((a, b) => b.share - a.share)[0];
  return trunk === undefined
    ? { words: 'Split a trunk, and leave part of it on the grid’s side.' }
    : {
        words: `Leave ${trunkName(trunk.name)} on the grid’s side.`,
        value: trunk.share,
        changes: [{ path: ['choices', 'backup', 'trunks', trunk.id], value: false }],
      };
}
