import { sheetOf } from '../../equipment.ts';
import { abouts } from '../abouts.ts';
import { type Judged, rule } from '../rule.ts';
import { against } from '../units.ts';

/** Changeover rating: does the changeover carry what passes through it, and keep the lines it has to? */
export const changeoverRating = rule({
  id: 'changeover-rating',
  sheet: '06',
  stops: true,
  question: 'Does the changeover carry what passes through it?',
  judge({ backup, choices, facts }): Judged[] {
    if (choices.backup === undefined) return [];
    const sheet = sheetOf(choices.equipment, choices.backup.changeoverSheet, 'changeover');
    const { lines } = choices.backup;
    const suits = sheet.supply === facts.supply.system && sheet.backupLines >= lines.length;
    const supply: Judged = {
      about: abouts.backup('changeover-lines', 'Changeover, lines'),
      state: suits ? 'meets' : 'fails',
      title: suits
        ? `${sheet.name} keeps ${lines.join(', ')} of a ${facts.supply.system} supply.`
        : `${sheet.name} is for ${sheet.supply}, ${sheet.backupLines} kept. Wanted: ${facts.supply.system}, ${lines.length} kept.`,
      mends: [{ words: 'Choose a changeover for this supply and these lines.' }],
      seen: 'equipment sheet',
    };
    if (backup.changeoverNeedA === undefined) return [supply];
    const { shown, ...measured } = against(backup.changeoverNeedA, 'at most', sheet.ratedA, 'A');
    const working = backup.workings.find(({ name }) => name.startsWith('Through the changeover'));
    return [
      {
        about: abouts.backup('changeover', 'Changeover'),
        ...measured,
        title: `Up to ${shown.value} pass through ${sheet.name}. It is made for ${shown.limit}.`,
        ...(working === undefined ? {} : { working }),
        mends: [{ words: 'Choose a larger changeover, or move less.' }],
      },
      supply,
    ];
  },
});
