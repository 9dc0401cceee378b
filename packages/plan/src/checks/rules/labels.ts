import { type AskedLabel, askedLabels } from '../../rules/askedLabels.ts';
import type { LabelText } from '../../rules/pack.ts';
import { plural } from '../abouts.ts';
import type { CheckContext } from '../context.ts';
import { eachOrAll } from '../eachOrAll.ts';
import { type Judged, rule } from '../rule.ts';

/** Labels: is every label printed that the region asks for, with its text? */
export const labels = rule({
  id: 'labels',
  sheet: '12',
  stops: false,
  question: 'Is every label printed that the design needs?',
  judge(context) {
    const needed = context.pack.labels.filter((label) => isNeeded(label, context));
    const asked = askedLabels[context.pack.id].filter((label) => isNeeded(label, context));
    return eachOrAll(
      [
        ...asked.flatMap((one) => withoutText(one, needed)),
        ...needed.map((label) => leftOut(label, context.choices.labels[label.id] === false)),
      ],
      {
        about: { kind: 'document', id: 'labels', name: 'those of the pack' },
        state: 'meets',
        title: `${plural(needed.length, 'text')} for labels, none left out of the pack.`,
      },
    );
  },
});

/** A label that is asked for and that no text of the region's list is for. */
function withoutText({ says, what }: AskedLabel, needed: readonly LabelText[]): Judged[] {
  if (needed.some((label) => label.says === says && label.text.trim() !== '')) return [];
  return [
    {
      about: { kind: 'document', id: `label-for-${says.replaceAll(' ', '-')}`, name: says },
      state: 'fails',
      title: `No label says ${what}. It is asked for, and the list has no text for it.`,
      mends: [{ words: 'Take its words from the edition in force, have it engraved, and add it to the pack by hand.' }],
    },
  ];
}

/** A label of the list: printed, or left out by choice. */
function leftOut({ id, text, where, clause, document, seen }: LabelText, isOff: boolean): Judged {
  const about = { kind: 'document' as const, id: `label-${id}`, name: text };
  if (!isOff) return { about, state: 'meets', title: `“${text}” is in the pack.` };
  return {
    about,
    state: 'fails',
    title: `“${text}” is left out. It belongs ${where}.`,
    from: { clause, document, seen },
    mends: [{ words: 'Print it.', changes: [{ path: ['choices', 'labels', id], value: true }] }],
  };
}

function isNeeded({ when }: Pick<LabelText, 'when'>, { choices }: CheckContext): boolean {
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
