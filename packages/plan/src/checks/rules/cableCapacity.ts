import { abouts } from '../abouts.ts';
import { cablePath, routePath } from '../circuitPaths.ts';
import { sizeName } from '../riseMends.ts';
import { type Judged, rule } from '../rule.ts';
import { showWithin } from '../showWithin.ts';

/** Cable: does it carry, where it runs, what its breaker lets through? In ≤ Iz. */
export const cableCapacity = rule({
  id: 'cable-capacity',
  sheet: '05',
  stops: true,
  question: 'Does each cable carry what its breaker lets through?',
  judge({ board, choices }) {
    return board.circuits.map((circuit): Judged => {
      const { capacityA, working, noTable } = circuit.capacity;
      const limit = Math.max(circuit.breakerA, circuit.designA);
      const shown = showWithin(capacityA, limit, 'at least', 1);
      const next = circuit.sizes.find((size) => size.meets);
      const size = sizeName(choices.equipment, circuit.cableSheetId);
      if (noTable !== undefined) {
        return {
          about: abouts.circuit(circuit.id, circuit.name),
          state: 'ask',
          title: `${circuit.name}: no table at hand says what ${size} carries where it runs.`,
          detail: noTable,
          working,
          needs: [routePath(circuit).join('.')],
        };
      }
      return {
        about: abouts.circuit(circuit.id, circuit.name),
        title: `${circuit.name}: ${size} carries ${shown.value} A where it runs. Its breaker lets ${shown.limit} A through.`,
        value: capacityA,
        limit,
        unit: 'A',
        sense: 'at least',
        working,
        mends: [
          next === undefined
            ? { words: 'No size at hand is enough: a cooler route, or fewer circuits together.' }
            : {
                words: `Run it in ${sizeName(choices.equipment, next.cableSheetId)}.`,
                value: next.capacityA,
                changes: [{ path: cablePath(circuit), value: next.cableSheetId }],
              },
        ],
      };
    });
  },
});
