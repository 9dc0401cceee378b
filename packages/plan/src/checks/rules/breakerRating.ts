import type { SourceCircuit } from '../../board/types.ts';
import { sheetOf, sheetsOfKind } from '../../equipment.ts';
import type { Mend } from '../../finding.ts';
import { given, worked } from '../../working.ts';
import { aboutCircuit, breakerPath } from '../circuits.ts';
import type { CheckContext } from '../context.ts';
import { isWithin, rule } from '../rule.ts';
import { against } from '../units.ts';

/**
 * Breaker rating: is the design current, times the region's factor, inside the breaker's rating?
 *
 *     f · Ib ≤ In,  f = 1, or 1.25 for continuous current in the NEC
 */
export const breakerRating = rule({
  id: 'breaker-rating',
  question: 'Is the current of each source inside the rating of its breaker?',
  sheet: '05',
  stops: true,
  judge: (context, { value: factor, clause }) =>
    context.board.circuits.map((circuit) => {
      const about = aboutCircuit(circuit);
      const { shown, ...measured } = against(factor * circuit.designA, 'at most', circuit.breakerA, 'A');
      const times = factor === 1 ? '' : `, ${factor} times taken`;
      return {
        about,
        ...measured,
        title: `${about.name} carries ${shown.value}${times}. Its breaker is ${shown.limit}.`,
        working: worked('Current the breaker is chosen by', measured.value, 'A', 'f · I_b', clause, [
          { name: 'factor', symbol: 'f', value: factor, unit: '', source: clause },
          { name: 'design current', symbol: 'I_b', value: circuit.designA, unit: 'A', source: 'equipment sheets' },
          given('breaker', circuit.breakerA, 'A', breakerPath(circuit).join('.'), 'equipment sheet'),
        ]),
        mends: isWithin(measured.value, measured.limit, 'at most') ? [] : mendsOf(circuit, measured.value, context),
      };
    }),
});

/** The smallest breaker at hand of the same poles that is large enough and that the cable still allows. */
function mendsOf(circuit: SourceCircuit, neededA: number, { choices }: CheckContext): readonly Mend[] {
  const { poles } = sheetOf(choices.equipment, circuit.breakerSheetId, 'breaker');
  const fit = sheetsOfKind(choices.equipment, 'breaker')
    .filter(({ sheet }) => sheet.poles === poles && sheet.ratedA >= neededA)
    .filter(({ sheet }) => sheet.ratedA <= circuit.capacity.capacityA)
    .sort((a, b) => a.sheet.ratedA - b.sheet.ratedA)[0];
  if (fit === undefined) {
    return [
      { words: circuit.kind === 'trunk' ? 'Put fewer units on it.' : 'Lay a thicker cable, then a larger breaker.' },
    ];
  }
  return [
    { words: `Fit ${fit.sheet.name}.`, value: neededA, changes: [{ path: breakerPath(circuit), value: fit.id }] },
  ];
}
