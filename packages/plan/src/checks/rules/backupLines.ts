import { abouts, plural } from '../abouts.ts';
import { eachOrAll } from '../eachOrAll.ts';
import { type Judged, rule } from '../rule.ts';

/** Backup lines: does every moved circuit get all the lines it stands on? A three-phase machine on one line burns. */
export const backupLines = rule({
  id: 'backup-lines',
  sheet: '06',
  stops: true,
  question: 'Does every moved circuit get all the lines it needs?',
  judge({ backup }) {
    const moved = backup.circuits.filter((circuit) => circuit.moved);
    if (moved.length === 0) return [];
    return eachOrAll(
      moved.map(({ id, name, standsOn, fed }): Judged => {
        const about = { kind: 'circuit' as const, id, name };
        if (fed) return { about, state: 'meets', title: `${name} gets the lines it needs.` };
        return {
          about,
          state: 'fails',
          title: `${name} stands on ${standsOn.join(', ')}. Backup keeps ${backup.lines.join(', ')}.`,
          // the battery side of a three-phase machine is a wire into harm, not a matter of practice
          seen: 'job',
          mends: [
            {
              words: 'Leave it on the grid side. It drops out by a phase-loss relay.',
              changes: [{ path: ['choices', 'backup', 'circuits', id, 'moved'], value: false }],
            },
          ],
        };
      }),
      {
        about: abouts.backup('lines', 'Lines in island'),
        state: 'meets',
        title: `${plural(moved.length, 'moved circuit')}, each with all its lines.`,
      },
    );
  },
});
