import { abouts } from '../abouts.ts';
import { rule } from '../rule.ts';

/** Surge: is there a surge device at the board, or one in the parts of this job? */
export const surge = rule({
  id: 'surge',
  sheet: '05',
  stops: false,
  question: 'Is there a surge device at the board?',
  judge({ facts, choices, pack }, limit) {
    const about = { ...abouts.board(facts.board.name), id: 'surge' };
    const chosen = Object.values(choices.parts).some((id) => {
      const sheet = choices.equipment[id];
      return sheet?.kind === 'part' && sheet.use === 'surge-device';
    });
    if (facts.board.surgeDevice || chosen) {
      return [
        { about, state: 'meets', title: `The ${pack.words.board} has a surge device${chosen ? ' in the parts' : ''}.` },
      ];
    }
    if (facts.board.surgeDevice === undefined) {
      return [
        {
          about,
          state: 'ask',
          title: `Is there a surge device in the ${pack.words.board}?`,
          needs: ['facts.board.surgeDevice'],
        },
      ];
    }
    return [
      {
        about,
        state: 'fails',
        title: `No surge device in the ${pack.words.board}.`,
        detail: `Asked for: ${limit.value}.`,
        mends: [{ words: 'Add a type 2 surge device to the parts.' }],
      },
    ];
  },
});
