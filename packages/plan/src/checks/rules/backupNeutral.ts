import { abouts, plural } from '../abouts.ts';
import { BEGUN } from '../begun.ts';
import { eachOrAll } from '../eachOrAll.ts';
import { type Judged, rule } from '../rule.ts';

/**
 * Backup neutral: was the neutral of every circuit that moves traced to its own line?
 *
 * A circuit that borrows its neutral from one that stays behind trips its residual device in island, or lives on
 * after its breaker is off. Nobody sees it from the design: it is asked. A whole-house backup moves every neutral
 * with the board.
 */
export const backupNeutral = rule({
  id: 'backup-neutral',
  sheet: '06',
  stops: true,
  question: 'Was the neutral of every moved circuit traced to its own line?',
  judge({ backup, facts, choices, state }) {
    if (choices.backup?.scope !== 'part') return [];
    const moved = backup.circuits.filter((circuit) => circuit.moved);
    if (moved.length === 0) return [];
    return eachOrAll(
      moved.map(({ id, name }): Judged => {
        const about = { kind: 'circuit' as const, id, name };
        if (facts.loads.circuits[id]?.neutralTraced === true) {
          return { about, state: 'meets', title: `${name} has its own neutral.`, seen: 'job' };
        }
        return {
          about,
          // once work has begun it is moved without knowing
          state: BEGUN.includes(state) ? 'fails' : 'ask',
          title: `Whose neutral does ${name} use? It was not traced.`,
          needs: [`facts.loads.circuits.${id}.neutralTraced`],
          mends: [{ words: 'Trace it with the board dead: lift it, and see what it takes along.' }],
        };
      }),
      {
        about: abouts.backup('neutrals', 'Neutrals in island'),
        state: 'meets',
        title: `${plural(moved.length, 'moved circuit')}, each with its own neutral.`,
        seen: 'job',
      },
    );
  },
});
