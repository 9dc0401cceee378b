import type { LabelText } from '../../rules/pack.ts';
import { abouts, plural } from '../abouts.ts';
import type { CheckContext } from '../context.ts';
import { type Judged, rule } from '../rule.ts';

/** Does this design need a label? */
export function isLabelNeeded({ choices }: Pick<CheckContext, 'choices'>, when: LabelText['when']): boolean {
  const solar = Object.keys(choices.trunks).length > 0;
  const battery = Object.keys(choices.batteries).length > 0;
  if (when === 'battery') return battery;
  if (when === 'backup') return choices.backup !== undefined;
  if (when === 'per trunk') return solar;
  return solar || battery;
}

/** Labels: is every label the design needs on the list? One is struck off by hand only. */
export const labels = rule({
  id: 'labels',
  sheet: '12',
  stops: false,
  question: 'Is every label the design needs on the list?',
  judge(context): Judged[] {
    const needed = context.pack.labels.filter((label) => isLabelNeeded(context, label.when));
    const struck = needed.filter((label) => context.choices.labels[label.id] === false);
    if (needed.length === 0) return [];
    if (struck.length === 0) {
      return [
        {
          about: { kind: 'document', id: 'labels', name: 'Labels' },
          state: 'meets',
          title: `${plural(needed.length, 'label')} on the list.`,
          // as sure as the least sure of its clauses
          ...(needed.some((label) => label.seen === 'memory') ? { seen: 'memory' as const } : {}),
        },
      ];
    }
    return struck.map((label) => ({
      about: { ...abouts.job(`label-${label.id}`, label.text), kind: 'document' },
      state: 'fails',
      title: `A label is struck off: ${label.text}.`,
      detail: `${label.clause}. Where: ${label.where}.`,
      mends: [{ words: 'Put it back on the list.', changes: [{ path: ['choices', 'labels', label.id], value: true }] }],
    }));
  },
});
