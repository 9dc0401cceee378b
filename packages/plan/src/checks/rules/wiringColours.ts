import { abouts } from '../abouts.ts';
import { rule } from '../rule.ts';

/** Colours: is the board wired in one scheme of this region? Black is neutral in one scheme and live in another. */
export const wiringColours = rule({
  id: 'wiring-colours',
  sheet: '05',
  stops: true,
  question: 'Is the board wired in one colour scheme of the region?',
  judge({ facts: { board }, pack, confirmed }, limit) {
    const about = { ...abouts.board(board.name), id: 'colours' };
    const name = pack.words.board;
    if (board.wiring === undefined) {
      return [{ about, state: 'ask', title: `Which colours does the ${name} have?`, needs: ['facts.board.wiring'] }];
    }
    if (!limit.value.includes(board.wiring)) {
      return [
        {
          about,
          state: 'fails',
          title: `The ${name} is down as ${board.wiring}. That scheme does not belong to this region.`,
          detail: `Here: ${limit.value.join(', ')}.`,
          mends: [{ words: 'Look at the board again and record its colours.' }],
        },
      ];
    }
    if (board.wiringMixed && !confirmed('wiring-colours', limit.document)) {
      return [
        {
          about,
          state: 'ask',
          title: `Two colour schemes meet in the ${name}. Is every conductor proven and marked?`,
          detail: 'Black is neutral in one scheme and live in another: prove each one before it is touched.',
          needs: ['facts.board.wiringMixed', 'choices.confirmations'],
        },
      ];
    }
    return [{ about, state: 'meets', title: `The ${name} is wired in ${board.wiring} colours.`, seen: 'job' }];
  },
});
