import { sheetOf, sheetsOfKind } from '../../equipment.ts';
import { abouts } from '../abouts.ts';
import { breakerPath } from '../circuitPaths.ts';
import { type Judged, rule } from '../rule.ts';
import { showWithin } from '../showWithin.ts';

/** Touch voltage that a residual device may leave standing, V. IEC 60364-4-41 411.5.3 (from memory). */
const TOUCH_V = 50;

/** Loop limit that a residual device sets, Ω: 50 V over its rated current. */
function residualLimitOhm(residualMA: number | undefined): number {
  return residualMA === undefined ? 0 : TOUCH_V / (residualMA / 1000);
}

/**
 * Fault loop: does a fault at the far end open the breaker at once?
 *
 * Hot loop against the table of the breaker; where the breaker has a residual part, against 50 V over its rated
 * current, which is larger.
 */
export const faultLoop = rule({
  id: 'fault-loop',
  sheet: '05',
  stops: true,
  question: 'Does a fault at the far end open the breaker?',
  judge({ board, choices }) {
    return board.circuits.flatMap((circuit): Judged[] => {
      const about = abouts.circuit(circuit.id, circuit.name);
      if (circuit.loop === undefined) {
        return [
          {
            about,
            state: 'ask',
            title: `${circuit.name}: the loop of the supply is not known.`,
            needs: ['facts.supply.loopOhm'],
          },
        ];
      }
      const breaker = sheetOf(choices.equipment, circuit.breakerSheetId, 'breaker');
      const limit = Math.max(circuit.loop.limitOhm ?? 0, residualLimitOhm(breaker.residualMA));
      if (limit === 0) return [];
      const shown = showWithin(circuit.loop.ohm, limit, 'at most', 2);
      const residual = sheetsOfKind(choices.equipment, 'breaker').find(
        ({ sheet }) => sheet.ratedA === breaker.ratedA && sheet.residualMA !== undefined && sheet.bothWays,
      );
      return [
        {
          about,
          title: `${circuit.name}: loop ${shown.value} Ω at the far end. ${shown.limit} Ω opens the breaker.`,
          value: circuit.loop.ohm,
          limit,
          unit: 'Ω',
          sense: 'at most',
          working: circuit.loop.working,
          mends: [
            residual === undefined
              ? { words: 'Run a larger cable, or fit a residual breaker.' }
              : {
                  words: `Fit ${residual.sheet.name}.`,
                  changes: [{ path: breakerPath(circuit), value: residual.id }],
                },
          ],
        },
      ];
    });
  },
});
