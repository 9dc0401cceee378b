import { sheetOf } from '../../equipment.ts';
import { given, worked } from '../../working.ts';
import { type Judged, rule } from '../rule.ts';
import { showWithin } from '../showWithin.ts';

/**
 * Breaking capacity: can board and breakers break the current of a dead short?
 *
 * Only a prospective current from the survey answers. What follows from the loop to earth leaves out the short between
 * lines, and the neutral's own path: it is told, and never judged by.
 */
export const breakingCapacity = rule({
  id: 'breaking-capacity',
  sheet: '05',
  stops: true,
  question: 'Can board and breakers break the current of a dead short?',
  judge({ board, facts, choices, pack }) {
    const kinds = new Map(board.circuits.map((circuit) => [circuit.breakerSheetId, circuit.breakingKA]));
    const name = pack.words.board;
    const things = [
      ...[...kinds].map(([id, kA]) => ({ id, name: sheetOf(choices.equipment, id, 'breaker').name, kA })),
      ...(facts.board.breakingKA === undefined
        ? []
        : [{ id: 'board', name: `The ${name}`, kA: facts.board.breakingKA }]),
    ];
    if (things.length === 0) return [];
    const { prospectiveA } = facts.supply;
    if (prospectiveA === undefined) {
      const by = board.prospectiveA;
      const loop =
        by === undefined
          ? ''
          : ` The loop to earth gives ${(by / 1000).toFixed(1)} kA; between lines it may be twice that.`;
      return [
        {
          about: { kind: 'board', id: 'breaking-capacity', name },
          state: 'ask',
          title: `What is the prospective current at the ${name}?`,
          detail: `Its breakers break ${Math.min(...things.map((thing) => thing.kA))} kA.${loop}`,
          needs: ['facts.supply.prospectiveA'],
        },
      ];
    }
    return things.map((thing): Judged => {
      const value = prospectiveA / 1000;
      const shown = showWithin(value, thing.kA, 'at most', 1);
      return {
        about: { kind: 'board', id: thing.id, name: thing.name },
        title: `A dead short drives ${shown.value} kA. ${thing.name} breaks ${shown.limit} kA.`,
        value,
        limit: thing.kA,
        unit: 'kA',
        sense: 'at most',
        working: worked('Prospective current', value, 'kA', 'A ÷ 1000', 'survey', [
          given('as the survey has it', prospectiveA, 'A', 'facts.supply.prospectiveA', 'survey'),
        ]),
        mends: [{ words: 'Choose devices for more, or have back-up by the service fuse proven by its maker.' }],
      };
    });
  },
});
