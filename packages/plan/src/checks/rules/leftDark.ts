import { abouts, plural } from '../abouts.ts';
import { eachOrAll } from '../eachOrAll.ts';
import { type Judged, rule } from '../rule.ts';

/** Left dark: does everything that the customer says must stay on, stay on? What moves and cannot be fed is told by `backup-lines`. */
export const leftDark = rule({
  id: 'left-dark',
  sheet: '06',
  stops: false,
  question: 'Does everything stay on that has to?',
  judge({ backup, facts }) {
    const must = backup.circuits.filter(({ id }) => facts.loads.circuits[id]?.wanted === 'must stay on');
    if (must.length === 0) return [];
    return eachOrAll(
      must.map(({ id, name, moved, shed }): Judged => {
        const about = { kind: 'circuit' as const, id, name };
        if (!backup.leftDark.includes(id)) return { about, state: 'meets', title: `${name} stays on.` };
        const why = !backup.present
          ? 'No backup is chosen.'
          : shed
            ? 'It is shed.'
            : moved
              ? 'Its lines are not kept.'
              : 'It does not move.';
        const at = ['choices', 'backup', 'circuits', id] as const;
        return {
          about,
          state: 'fails',
          title: `${name} must stay on and goes dark. ${why}`,
          mends: !backup.present
            ? [{ words: 'Tell the customer, or choose a changeover and a battery.' }]
            : shed
              ? [{ words: 'Keep it.', changes: [{ path: [...at, 'shed'], value: false }] }]
              : moved
                ? [{ words: 'Tell the customer, or keep all its lines alive.' }]
                : [{ words: 'Move it.', changes: [{ path: at, value: { moved: true, shed: false } }] }],
        };
      }),
      {
        about: abouts.backup('left-dark', 'What stays on'),
        state: 'meets',
        title: `${plural(must.length, 'circuit')} that must stay on, and ${must.length === 1 ? 'it does' : 'all do'}.`,
      },
    );
  },
});
