import type { Finding, Plan } from '@eaveline/plan';
import { expect, test } from 'vitest';
import { confirmationChange, limitsToConfirm } from './confirming.ts';
import { headOfHandover } from './headOfHandover.ts';
import { leftOut } from './leftOut.ts';
import type { OpenEnds } from './openEnds.ts';
import { openLines } from './openLines.ts';

const nothing: OpenEnds = {
  stopping: 0,
  failing: 0,
  asking: 0,
  facts: 0,
  unconfirmed: [],
  testsUnread: 0,
  testsPast: 0,
  unitsUnscanned: 0,
  signed: true,
};

test('with nothing open the pack can go; one unread test is one kind of thing and holds it', () => {
  expect(headOfHandover(nothing).sentence).toBe('Nothing is open. The pack can be handed over.');
  expect(openLines(nothing).every(({ state }) => state === 'meets')).toBe(true);
  expect(headOfHandover({ ...nothing, testsUnread: 1 })).toEqual({
    sentence: 'Not to be handed over yet. One kind of thing is open.',
    quiet: 'No check stops it. Until all is closed the pack says so on every page.',
  });
});

test('a check that fails without stopping the job is counted once, on its own line', () => {
  const [stops, fails] = openLines({ ...nothing, stopping: 2, failing: 3 });
  expect(stops).toMatchObject({ open: 2, state: 'fails', words: 'Two checks stop the job.', sheet: '08' });
  expect(fails).toMatchObject({ open: 1, state: 'fails' });
});

const finding = (more: Partial<Finding>) =>
  ({ rule: 'supply-voltage', unconfirmed: true, sense: 'at most', unit: 'V', title: '', ...more }) as Finding;

test('a limit is shown with what it says before anybody confirms it; equal values are said once', () => {
  const [limit] = limitsToConfirm({
    unconfirmed: [{ rule: 'supply-voltage', clause: '230 V +10 −6 %', edition: 'AS 60038 2012' }],
    findings: [
      finding({ limit: 253, title: 'L1' }),
      finding({ limit: 253, title: 'L2' }),
      finding({ limit: 216.2, sense: 'at least', title: 'L3' }),
      finding({ rule: 'trunk-rise', limit: 4.6 }),
    ],
  });
  expect(limit).toMatchObject({
    name: 'Supply voltage',
    says: ['at most 253\u00a0V', 'at least 216\u00a0V'],
    judges: ['L1', 'L2', 'L3'],
  });
});

test('a word for a limit holds for its rule and edition, with name, licence and day', () => {
  const signer = { by: 'Nia', licence: 'E 1234', on: '2026-05-12' };
  expect(confirmationChange({ rule: 'supply-voltage', edition: 'AS 60038 2012' }, signer)).toEqual({
    path: ['choices', 'confirmations', 'supply-voltage-as-60038-2012'],
    value: { rule: 'supply-voltage', edition: 'AS 60038 2012', ...signer },
  });
});

test('what two stages leave out alike is said once, with the first', () => {
  const stage = (...leavesOut: string[]) => ({ leavesOut });
  const plan = {
    ...{ site: stage('a'), sun: stage('a', 'b'), roof: stage(), array: stage(), trunks: stage(), board: stage() },
    ...{ energy: stage(), backup: stage(), structure: stage('c'), checks: stage(), kit: stage(), day: stage() },
    tests: stage(),
  } as unknown as Plan;
  expect(leftOut(plan)).toEqual([
    { stage: 'Site', sheet: '01', lines: ['a'] },
    { stage: 'Sun', sheet: '01', lines: ['b'] },
    { stage: 'Structure', sheet: '03', lines: ['c'] },
  ]);
});
