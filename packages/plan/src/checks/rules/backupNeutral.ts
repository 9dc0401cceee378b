import { abouts } from '../abouts.ts';
import { movedCircuits } from '../movedCircuits.ts';
import { type Judged, rule } from '../rule.ts';

/**
 * Neutrals: has the neutral of every circuit moved been traced to it?
 *
 * A circuit moved without its own neutral sends its current back through a residual device of the other side, or
 * loses its neutral in an island. A whole house moves with its neutrals.
 */
export const backupNeutral = rule({
  id: 'backup-neutral',
  sheet: '06',
  stops: true,
  question: 'Does every circuit moved bring its own neutral?',
  judge(context) {
    if (context.choices.backup?.scope !== 'part') return [];
    return movedCircuits(context).map(({ id, facts }): Judged => {
      const about = abouts.circuit(id, facts.name);
      if (facts.neutralTraced === undefined) {
        return {
          about,
          state: 'ask',
          title: `Whose neutral does ${facts.name} use?`,
          needs: [`facts.loads.circuits.${id}.neutralTraced`],
        };
      }
      return facts.neutralTraced
        ? { about, state: 'meets', title: `${facts.name} brings its own neutral.`, seen: 'job' }
        : {
            about,
            state: 'fails',
            title: `${facts.name} shares a neutral. It may not be moved so.`,
            mends: [
              {
                words: `Leave ${facts.name} off the backup.`,
                changes: [{ path: ['choices', 'backup', 'circuits', id, 'moved'], value: false }],
              },
              { words: 'Or run it a neutral of its own.' },
            ],
          };
    });
  },
});
