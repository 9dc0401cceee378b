import { sheetOf, sheetsOfKind } from '../../equipment.ts';
import { abouts } from '../abouts.ts';
import { planesInUse } from '../planesInUse.ts';
import { rule } from '../rule.ts';

/** Fixing and covering: is the fixing made for the covering of each plane it goes on? */
export const fixingCovering = rule({
  id: 'fixing-covering',
  sheet: '03',
  stops: true,
  question: 'Is the fixing made for the covering of each plane?',
  judge(context) {
    const { choices } = context;
    if (choices.mounting === undefined) return [];
    const fixing = sheetOf(choices.equipment, choices.mounting.fixingSheet, 'fixing');
    return planesInUse(context).map(({ id, facts }) => {
      const about = abouts.plane(id, facts.name);
      const covering = facts.covering.replace('-', ' ');
      if (fixing.suits.includes(facts.covering)) {
        return { about, state: 'meets' as const, title: `${fixing.name} is made for ${covering}.` };
      }
      const other = sheetsOfKind(choices.equipment, 'fixing').find(({ sheet }) => sheet.suits.includes(facts.covering));
      return {
        about,
        state: 'fails' as const,
        title: `${facts.name} is ${covering}. ${fixing.name} is made for ${wordsOf(fixing.suits)}.`,
        mends: [
          other === undefined
            ? { words: `Choose a fixing made for ${covering}.` }
            : {
                words: `Use ${other.sheet.name}.`,
                changes: [{ path: ['choices', 'mounting', 'fixingSheet'], value: other.id }],
              },
        ],
      };
    });
  },
});

const wordsOf = (suits: readonly string[]) => suits.map((one) => one.replace('-', ' ')).join(' and ');
