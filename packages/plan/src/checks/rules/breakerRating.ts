import { sheetOf, sheetsOfKind } from '../../equipment.ts';
import { worked } from '../../working.ts';
import { abouts } from '../abouts.ts';
import { breakerCarriesA } from '../breakerCarriesA.ts';
import { breakerPath } from '../circuitPaths.ts';
import { isWithin, type Judged, rule } from '../rule.ts';
import { showWithin } from '../showWithin.ts';

/** Breaker: does it carry the design current for hours? Ib ≤ In · share. */
export const breakerRating = rule({
  id: 'breaker-rating',
  sheet: '05',
  stops: true,
  question: 'Does each breaker carry its circuit for hours?',
  judge({ board, choices, pack }, limit) {
    return board.circuits.map((circuit): Judged => {
      const breaker = sheetOf(choices.equipment, circuit.breakerSheetId, 'breaker');
      const carriesA = breakerCarriesA(breaker, pack);
      const shown = showWithin(circuit.designA, carriesA, 'at most', 1);
      const next = sheetsOfKind(choices.equipment, 'breaker')
        .filter(
          ({ sheet }) =>
            sheet.curve === breaker.curve &&
            sheet.poles === breaker.poles &&
            isWithin(circuit.designA, breakerCarriesA(sheet, pack), 'at most') &&
            isWithin(sheet.ratedA, circuit.capacity.capacityA, 'at most'),
        )
        .sort((a, b) => a.sheet.ratedA - b.sheet.ratedA)[0];
      return {
        about: abouts.circuit(circuit.id, circuit.name),
        title: `${circuit.name} runs at ${shown.value} A. Its ${breaker.ratedA} A breaker carries ${shown.limit} A for hours.`,
        value: circuit.designA,
        limit: carriesA,
        unit: 'A',
        sense: 'at most',
        working: circuit.designWorking,
        limitWorking: worked('Carried for hours', carriesA, 'A', 'I_n · share', limit.clause, [
          { name: 'rating', value: breaker.ratedA, unit: 'A', source: 'breaker sheet' },
          { name: 'its continuous share', value: breaker.continuousShare, unit: '', source: 'breaker sheet' },
          { name: 'factor of the region', value: limit.value, unit: '', source: limit.clause },
        ]),
        mends: [
          next === undefined
            ? { words: 'No breaker at hand carries it inside its cable: larger cable first, or fewer units.' }
            : {
                words: `Fit ${next.sheet.name}.`,
                changes: [{ path: breakerPath(circuit), value: next.id }],
              },
        ],
      };
    });
  },
});
