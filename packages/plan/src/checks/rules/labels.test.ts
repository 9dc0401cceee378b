import { expect, test } from 'vitest';
import { rulePacks } from '../../rules/index.ts';
import type { LabelText, RulePack } from '../../rules/pack.ts';
import { contextOf } from '../context.ts';
import { runRule } from '../runRules.ts';
import { baseStages } from '../testing/baseStages.ts';
import { baseView } from '../testing/baseView.ts';
import { labels } from './labels.ts';

type Variant = RulePack['variant'];

/** What the rule says of the sound design, which has trunks, a battery and a backup, with a list of its own. */
function judged(variant: Variant, change: (list: readonly LabelText[]) => readonly LabelText[] = (list) => list) {
  const pack = { ...rulePacks[variant], labels: change(rulePacks[variant].labels) };
  return runRule(labels, contextOf(baseView(variant), pack, baseStages(variant)));
}
const titles = (found: ReturnType<typeof judged>) => found.map(({ state, title }) => `${state}: ${title}`);

// the rows of the trade's table of labels that ask something of a region; the whole line is asked of all three
// but "do not relocate" and the emergency number (US) and the tests with their dates (BS 7671 514)
test.each([
  ['au', 14],
  ['gb', 15],
  ['us', 16],
] as const)(
  '%s: %i labels are asked for with solar, battery and backup, and every one has its text',
  (variant, count) => {
    expect(titles(judged(variant))).toEqual([`meets: ${count} texts for labels, none left out of the pack.`]);
  },
);

test('a text that drops out of the list is missed, whichever it is', () => {
  let dropped = 0;
  for (const variant of ['au', 'gb', 'us'] as const) {
    for (const { id } of rulePacks[variant].labels) {
      const found = judged(variant, (list) => list.filter((label) => label.id !== id));
      expect(
        found.map(({ state }) => state),
        `${variant} without ${id}`,
      ).toEqual(['fails']);
      dropped += 1;
    }
  }
  expect(dropped).toBe(14 + 15 + 16);
});

test('it says what nobody is told, and that the words come from the edition in force', () => {
  const [found] = judged('au', (list) => list.filter(({ id }) => id !== 'shutdown'));
  expect(found).toMatchObject({
    state: 'fails',
    title: 'No label says the shutdown procedure. It is asked for, and the list has no text for it.',
    clause: 'AS/NZS 4777.1 Section 6, 5033, 5139',
  });
  expect(found?.mends.map(({ words }) => words)).toEqual([
    'Take its words from the edition in force, have it engraved, and add it to the pack by hand.',
  ]);
});

test('a label without words is no label', () => {
  const found = judged('gb', (list) =>
    list.map((label) => (label.id === 'directory' ? { ...label, text: ' ' } : label)),
  );
  expect(titles(found)).toEqual([
    'fails: No label says what each way of the board feeds. It is asked for, and the list has no text for it.',
  ]);
});

test('without a battery and a backup none of theirs is missed', () => {
  const view = baseView('us');
  view.choices.batteries = {};
  delete view.choices.backup;
  const own = rulePacks.us.labels.filter(({ when }) => when !== 'battery' && when !== 'backup');
  const found = runRule(labels, contextOf(view, { ...rulePacks.us, labels: own }, baseStages('us')));
  expect(titles(found)).toEqual(['meets: 11 texts for labels, none left out of the pack.']);
});
