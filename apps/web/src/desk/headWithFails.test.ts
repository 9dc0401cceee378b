import { kestrelRise } from '@eaveline/job';
import { workOut } from '@eaveline/plan';
import { expect, test } from 'vitest';
import { headOfTrunks } from '../trunks/headOfTrunks.ts';
import { headWithFails } from './headWithFails.ts';

const { a } = kestrelRise.choices.trunks;
if (a === undefined) throw new Error('Kestrel Rise has a trunk A');
// fed at its fifth drop trunk A keeps its limit by itself, and not with the battery beside it
const fed = {
  ...kestrelRise,
  choices: { ...kestrelRise.choices, trunks: { ...kestrelRise.choices.trunks, a: { ...a, feedDrop: 5 } } },
};
const { trunks, checks } = workOut(fed);

test('a head that reads well names the check that fails all the same', () => {
  const head = headOfTrunks({ trunks, checks });
  expect(head.sentence).toBe('Trunk A rises 4.37 V. The limit is 4.60 V.');
  const { sentence, quiet } = headWithFails('04', head, checks.findings);
  expect(sentence).toBe(head.sentence);
  expect(quiet).toMatch(/^One check fails here: .*battery.*, Trunk A\. /i);
  expect(quiet?.endsWith(head.quiet as string)).toBe(true);
});

test('where nothing of the sheet fails the head stays as it is; of many fails two are named', () => {
  const head = { sentence: 'All is well.' };
  expect(headWithFails('09', head, checks.findings)).toBe(head);
  const [one] = checks.findings;
  if (one === undefined) throw new Error('no finding');
  const five = Array.from({ length: 5 }, () => ({ ...one, sheet: '05' as const, state: 'fails' as const }));
  expect(headWithFails('05', head, five).quiet).toMatch(/^Five checks fail here: .*; .*, and 3 more\.$/);
  expect(headWithFails('08', head, five)).toBe(head);
});
