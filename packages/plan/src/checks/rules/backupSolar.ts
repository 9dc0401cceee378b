import { sheetOf } from '../../equipment.ts';
import type { Mend } from '../../finding.ts';
import { abouts } from '../abouts.ts';
import type { CheckContext } from '../context.ts';
import { isWithin, rule } from '../rule.ts';
import { against } from '../units.ts';

/**
 * Backup solar: is the solar on the backed-up side small enough for the battery to hold back when it is full?
 *
 * The smaller of the region's share and what the battery's own sheet says.
 */
export const backupSolar = rule({
  id: 'backup-solar',
  sheet: '06',
  stops: true,
  question: 'Can the battery hold back the solar on its side when it is full?',
  judge: (context, limit) => {
    const { solarShare, solarOnBackupVA } = context.backup;
    if (solarShare === undefined) return [];
    const sheetShare = Math.min(...batterySheets(context).map(({ solarShareMax }) => solarShareMax ?? Infinity));
    const bySheet = sheetShare < limit.value;
    const { shown, ...measured } = against(solarShare, 'at most', bySheet ? sheetShare : limit.value, '');
    const meets = isWithin(solarShare, measured.limit, 'at most');
    return [
      {
        about: abouts.backup('solar', 'Solar in island'),
        ...measured,
        title: `${Math.round(solarOnBackupVA)} VA of solar stay on, ${shown.value} of the battery. ${shown.limit} is the most.`,
        ...(bySheet
          ? {
              from: {
                clause: 'battery sheet, solar it holds back',
                document: 'data sheet',
                seen: 'equipment sheet' as const,
              },
            }
          : {}),
        ...workingOf(context),
        mends: meets ? [] : leaveOut(context, measured.limit),
      },
    ];
  },
});

function workingOf({ backup }: CheckContext) {
  const working = backup.workings.find(({ name }) => name === 'Solar on the backed-up side');
  return working === undefined ? {} : { working };
}

function batterySheets({ choices }: CheckContext) {
  return Object.values(choices.batteries).map(({ sheet }) => sheetOf(choices.equipment, sheet, 'battery'));
}

/** The smallest trunk that is enough to leave out. */
function leaveOut({ backup, trunks, choices }: CheckContext, most: number): readonly Mend[] {
  const { solarShare = 0, solarOnBackupVA } = backup;
  const batteryVA = solarOnBackupVA / solarShare;
  const fit = trunks.trunks
    .filter(({ id }) => choices.backup?.trunks[id] === true)
    .map(({ id, name, ratedVA }) => ({ id, name, ratedVA, share: (solarOnBackupVA - ratedVA) / batteryVA }))
    .filter(({ share }) => isWithin(share, most, 'at most'))
    .sort((a, b) => a.ratedVA - b.ratedVA)[0];
  if (fit === undefined) return [{ words: 'Leave more than one trunk out of the island, or take a larger battery.' }];
  return [
    {
      words: `Leave ${fit.name} out of the island.`,
      value: fit.share,
      changes: [{ path: ['choices', 'backup', 'trunks', fit.id], value: false }],
    },
  ];
}
