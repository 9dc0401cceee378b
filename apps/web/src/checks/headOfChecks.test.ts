import type { Plan } from '@eaveline/plan';
import { expect, test } from 'vitest';
import { headOfChecks } from './headOfChecks.ts';

const checks = (states: readonly ('fails' | 'ask' | 'meets')[], unconfirmed = 0, stops = true) => {
  const of = (state: string) => states.filter((each) => each === state).length;
  const tally = { fails: of('fails'), ask: of('ask'), meets: of('meets'), unconfirmed };
  const findings = states.map((state) => ({ state, stops }));
  return { checks: { findings, tally, unconfirmed: Array(unconfirmed).fill({}) } } as unknown as Plan;
};

test('what stops the job, what waits', () => {
  expect(headOfChecks(checks(['fails', 'fails', 'fails', 'ask', 'ask', 'ask', 'ask'])).sentence).toBe(
    'Three things stop this job. Four wait for an answer.',
  );
  expect(headOfChecks(checks(['meets', 'ask'])).sentence).toBe('Nothing stops this job. One waits for an answer.');
});

test('a fail that does not stop the job is not called one that does', () => {
  const head = headOfChecks(checks(['fails'], 0, false));
  expect(head.sentence).toBe('Nothing stops this job.');
  expect(head.quiet).toContain('One thing more fails without stopping it');
});

test('limits from memory are counted aloud, and a plan that judged nothing is no pass', () => {
  expect(headOfChecks(checks(['meets', 'meets'], 2)).quiet).toContain('yet to confirm');
  expect(headOfChecks(checks([])).sentence).toBe('Nothing was judged. That is no pass.');
});
