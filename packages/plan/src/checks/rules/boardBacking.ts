import { abouts } from '../abouts.ts';
import { rule } from '../rule.ts';

/** Board backing: is the board known not to be backed with asbestos before it is drilled? */
export const boardBacking = rule({
  id: 'board-backing',
  question: 'Is the backing of the board known to be free of asbestos?',
  sheet: '05',
  stops: true,
  judge: ({ facts, board }, limit) => {
    const about = abouts.board(board.name);
    const { backing } = facts.board;
    const { yearBuilt } = facts.site;
    if (backing === 'asbestos') {
      return [
        {
          about,
          state: 'fails',
          title: `The ${board.name} is backed with asbestos. Nobody drills it.`,
          mends: [{ words: 'A licensed remover takes the backing out, or a new board goes beside it.' }],
        },
      ];
    }
    if (backing !== undefined && backing !== 'unknown') {
      return [{ about, state: 'meets', title: `The ${board.name} is backed with ${backing}.`, seen: 'job' }];
    }
    if (yearBuilt !== undefined && yearBuilt >= limit.value) {
      return [
        { about, state: 'meets', title: `The ${board.name} is of ${yearBuilt}, after asbestos went out of boards.` },
      ];
    }
    return [
      {
        about,
        state: 'ask',
        title: `Is the backing of the ${board.name} asbestos? Until a sample says no, treat it as yes.`,
        detail: yearBuilt === undefined ? 'The year of the building is not known.' : `The building is of ${yearBuilt}.`,
        needs: ['facts.board.backing', ...(yearBuilt === undefined ? ['facts.site.yearBuilt'] : [])],
      },
    ];
  },
});
