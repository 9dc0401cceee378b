import { sheetOf, sheetsOfKind } from '../../equipment.ts';
import { abouts } from '../abouts.ts';
import { breakerPath } from '../circuitPaths.ts';
import { type Judged, rule } from '../rule.ts';

/** Both ways: is every device that a source feeds made for current either way? */
export const breakerBothWays = rule({
  id: 'breaker-both-ways',
  sheet: '05',
  stops: true,
  question: 'May current flow either way through every source’s breaker?',
  judge({ board, choices }) {
    return board.circuits.map((circuit): Judged => {
      const about = abouts.circuit(circuit.id, circuit.name);
      const breaker = sheetOf(choices.equipment, circuit.breakerSheetId, 'breaker');
      if (breaker.bothWays) {
        return { about, state: 'meets', title: `${circuit.name}: current may flow either way through its breaker.` };
      }
      const next = sheetsOfKind(choices.equipment, 'breaker').find(
        ({ sheet }) => sheet.bothWays && sheet.ratedA === breaker.ratedA && sheet.poles === breaker.poles,
      );
      return {
        about,
        state: 'fails',
        title: `${circuit.name}: ${breaker.name} takes current one way only.`,
        detail: 'Fed from its load side it can burn out and stay closed on a fault.',
        mends: [
          next === undefined
            ? { words: 'Choose a device marked for both ways.' }
            : { words: `Fit ${next.sheet.name}.`, changes: [{ path: breakerPath(circuit), value: next.id }] },
        ],
      };
    });
  },
});
