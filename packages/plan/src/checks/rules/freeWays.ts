import { sheetOf } from '../../equipment.ts';
import { given, worked } from '../../working.ts';
import { abouts } from '../abouts.ts';
import { rule } from '../rule.ts';

/** Free ways: is there room in the board for every breaker? */
export const freeWays = rule({
  id: 'free-ways',
  sheet: '05',
  stops: true,
  question: 'Is there room for every breaker?',
  judge({ board, choices, pack }) {
    if (board.waysNeeded === 0) return [];
    const about = { ...abouts.board(board.name), id: 'ways' };
    if (board.waysFree === undefined) {
      return [
        {
          about,
          state: 'ask',
          title: `How many ways are free in the ${pack.words.board}? ${board.waysNeeded} are needed.`,
          needs: ['facts.board.freeWays'],
        },
      ];
    }
    const landing = board.circuits.filter(({ kind, of }) => {
      const source = kind === 'trunk' ? choices.trunks[of] : choices.batteries[of];
      return source?.landsOn !== 'changeover';
    });
    return [
      {
        about,
        title: `The breakers take ${board.waysNeeded} ways. ${board.waysFree} are free.`,
        value: board.waysNeeded,
        limit: board.waysFree,
        unit: 'ways',
        sense: 'at most',
        working: worked(
          'Ways taken',
          board.waysNeeded,
          'ways',
          'poles of the breakers that land in this board',
          'equipment sheets',
          [
            ...landing.map(({ name, breakerSheetId }) =>
              given(
                name,
                sheetOf(choices.equipment, breakerSheetId, 'breaker').poles,
                'poles',
                `choices.equipment.${breakerSheetId}.poles`,
                'equipment sheet',
              ),
            ),
            given('ways free', board.waysFree, 'ways', 'facts.board.freeWays'),
          ],
          { decimals: 0 },
        ),
        // a breaker without a place is no matter of practice
        seen: 'job',
        mends: [{ words: 'Fit a sub-board for the sources.' }],
      },
    ];
  },
});
