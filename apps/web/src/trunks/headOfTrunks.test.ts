import type { Plan } from '@eaveline/plan';
import { expect, test } from 'vitest';
import { headOfTrunks } from './headOfTrunks.ts';

const trunk = (id: string, totalV: number, feedOptions: readonly { drop: number; totalV: number }[] = []) => ({
  id,
  name: id.toUpperCase(),
  rise: { totalV, share: totalV / 230 },
  feedDrop: 1,
  mainsKnown: true,
  feedOptions,
});
const plan = (trunks: object[], findings: object[] = []) =>
  ({ trunks: { trunks, nominalV: 230 }, checks: { findings } }) as unknown as Plan;
const judged = (value: number, limit: number) => ({
  rule: 'trunk-rise',
  about: { kind: 'trunk', id: 'a' },
  value,
  limit,
});

test('the trunk that rises most stands in the sentence with its limit, and the better feed below', () => {
  const head = headOfTrunks(
    plan([trunk('a', 5.32, [{ drop: 5, totalV: 4.25 }]), trunk('b', 3.7), trunk('c', 3.41)], [judged(5.32, 4.6)]),
  );
  expect(head.sentence).toBe('Trunk A rises 5.32 V. The limit is 4.60 V.');
  expect(head.quiet).toBe('Fed at its fifth drop it rises 4.25 V. B and C rise less: 3.70 and 3.41 V.');
});

test('a rise of 4.6004 V that fails 4.60 shows the digits that make it fail', () => {
  expect(headOfTrunks(plan([trunk('a', 4.6004)], [judged(4.6004, 4.6)])).sentence).toBe(
    'Trunk A rises 4.6004 V. The limit is 4.6000 V.',
  );
});

test('without a rule no limit is claimed', () => {
  expect(headOfTrunks(plan([trunk('a', 2)])).sentence).toBe('Trunk A rises 2.00 V.');
});
