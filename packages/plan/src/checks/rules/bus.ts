import { abouts } from '../abouts.ts';
import { rule } from '../rule.ts';
import { showWithin } from '../showWithin.ts';

/** Bars: do they carry the network's share and the sources' together? */
export const bus = rule({
  id: 'bus',
  sheet: '05',
  stops: true,
  question: 'Do the bars carry network and sources together?',
  judge({ board, pack }, limit) {
    const { busA, comparedA, limitA, mainA, sourceA, working } = board.bus;
    const about = { ...abouts.board(board.name), id: 'bus' };
    if (busA === undefined || comparedA === undefined || limitA === undefined) {
      return [
        {
          about,
          state: 'ask',
          title: `What may the bars of the ${pack.words.board} carry?`,
          detail: `${sourceA.toFixed(0)} A of sources land on them.`,
          needs: ['facts.board.busA'],
        },
      ];
    }
    const shown = showWithin(comparedA, limitA, 'at most', 0);
    // what the main may be so that the sum just fits: the sources' part of the sum stays
    const mainMostA = mainA === undefined ? undefined : mainA - (comparedA - limitA);
    return [
      {
        about,
        title: `The bars would carry ${shown.value} A. ${shown.limit} A is the most.`,
        detail: `${board.bus.rule.charAt(0).toUpperCase()}${board.bus.rule.slice(1)}.`,
        value: comparedA,
        limit: limitA,
        unit: 'A',
        sense: 'at most',
        ...(working === undefined ? {} : { working }),
        mends: [
          ...(mainMostA === undefined || mainMostA <= 0
            ? []
            : [{ words: `A main of ${Math.floor(mainMostA)} A or less, after a load sum.`, value: limitA }]),
          { words: `Land a source ahead of the bars, or change the ${pack.words.board}. ${limit.note ?? ''}`.trim() },
        ],
      },
    ];
  },
});
