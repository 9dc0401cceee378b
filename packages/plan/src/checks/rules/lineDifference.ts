import { linesOf } from '../../supply.ts';
import { worked } from '../../working.ts';
import { abouts } from '../abouts.ts';
import { isWithin, rule } from '../rule.ts';
import { showWithin } from '../showWithin.ts';

/** Difference between lines: is the array, with the batteries, spread evenly enough? */
export const lineDifference = rule({
  id: 'line-difference',
  sheet: '05',
  stops: false,
  question: 'Are the sources spread evenly over the lines?',
  judge({ board, facts, pack }, limit) {
    const lines = linesOf(facts.supply.system);
    if (lines.length < 2) return [];
    const { va, older } = limit.value;
    const kVA = board.largestDifferenceVA / 1000;
    const shown = showWithin(kVA, va / 1000, 'at most', 2);
    const over = !isWithin(kVA, va / 1000, 'at most');
    return [
      {
        about: { ...abouts.board(board.name), id: 'lines' },
        title: `The ${pack.words.line}s differ by ${shown.value} kVA. ${older ? 'The older edition sets' : 'The limit is'} ${shown.limit} kVA.`,
        ...(older ? { detail: 'The figure of the edition in force was not found. Look it up.' } : {}),
        value: kVA,
        limit: va / 1000,
        unit: 'kVA',
        sense: 'at most',
        ...(older && over ? { state: 'ask' as const } : {}),
        needs: ['choices.rules.editions'],
        working: worked(
          'Difference between lines',
          kVA,
          'kVA',
          'fullest less emptiest line, solar and batteries at their ratings',
          limit.clause,
          lines.map((line) => ({ name: line, value: board.lineVA[line], unit: 'VA', source: 'equipment sheets' })),
        ),
        mends: [{ words: 'Put a trunk, or its units, on the emptiest line.' }],
      },
    ];
  },
});
