import type { LabelText } from '../../rules/pack.ts';
import { plural } from '../abouts.ts';
import type { CheckContext } from '../context.ts';
import { eachOrAll } from '../eachOrAll.ts';
import { type Judged, rule } from '../rule.ts';

/** Labels: is every label printed that the design needs? */
export const labels = rule({
  id: 'labels',
  sheet: '12',
  stops: false,
  question: 'Is every label printed that the design needs?',
  judge(context) {
    const needed = context.pack.labels.filter((label) => isNeeded(label, context));
    return eachOrAll(
      needed.map(({ id, text, where, clause, document, seen }): Judged => {
        const about = { kind: 'document' as const, id: `label-${id}`, name: text };
        if (context.choices.labels[id] !== false) return { about, state: 'meets', title: `“${text}” is in the pack.` };
        return {
          about,
          state: 'fails',
          title: `“${text}” is left out. It belongs ${where}.`,
          from: { clause, document, seen },
          mends: [{ words: 'Print it.', changes: [{ path: ['choices', 'labels', id], value: true }] }],
        };
      }),
      {
        about: { kind: 'document', id: 'labels', name: 'those of the pack' },
        state: 'meets',
        title: `${plural(needed.length, 'text')} for labels, none left out of the pack.`,
      },
    );
  },
});

function isNeeded({ when }: LabelText, { choices }: CheckContext): boolean {
  const batteries = Object.keys(choices.batteries).length;
  const trunks = Object.keys(choices.trunks).length;
  const needed: Readonly<Record<LabelText['when'], boolean>> = {
    always: true,
    battery: batteries > 0,
    backup: choices.backup !== undefined,
    'per source': batteries + trunks > 0,
    'per trunk': trunks > 0,
  };
  return needed[when];
}
