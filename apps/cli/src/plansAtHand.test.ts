import { type Job, kestrelRise, quaysideTerrace } from '@eaveline/job';
import { planFigures, workOut } from '@eaveline/plan';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { plansAtHand } from './plansAtHand.ts';

const now = () => new Date('2026-05-12T07:00:00Z');
const renamed = (name: string): Job => ({ ...quaysideTerrace, name });
const nameIn = (answer: string | undefined) =>
  answer && (JSON.parse(answer) as { plan: { jobName: string } }).plan.jobName;

const loud = (error: Error) => {
  throw error;
};

beforeEach(() => vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout'] }));
afterEach(() => vi.useRealTimers());

test('a plan worked out is at hand for that very document, as sheets read it', () => {
  const plans = plansAtHand('a9d41c0de2f7b365', now, loud);
  expect(plans.answer(kestrelRise)).toBeUndefined();
  const plan = plans.workOut(kestrelRise);
  expect(plan.checks.tally).toEqual(workOut(kestrelRise).checks.tally);
  const answer = plans.answer(structuredClone(kestrelRise)) ?? '';
  expect(JSON.parse(answer)).toEqual({
    engine: 'a9d41c0de2f7b365',
    job: JSON.parse(JSON.stringify(kestrelRise)),
    plan: JSON.parse(JSON.stringify(planFigures(plan))),
    at: '2026-05-12T07:00:00.000Z',
  });
  expect(plans.answer({ ...kestrelRise, name: 'Kestrel' })).toBeUndefined();
});

test('of saves in a row the newest is worked out, when they rest', async () => {
  const plans = plansAtHand('one', now, loud);
  for (const name of ['a', 'b', 'c']) {
    plans.soon(renamed(name));
    vi.advanceTimersByTime(1900);
  }
  expect(plans.answer(renamed('c'))).toBeUndefined();
  vi.advanceTimersByTime(100);
  await vi.waitFor(() => expect(nameIn(plans.answer(renamed('c')))).toBe('c'));
  expect(plans.answer(renamed('b'))).toBeUndefined();
});

test('a job that cannot be worked out is told of, and has no answer', async () => {
  const told = vi.fn();
  const plans = plansAtHand('one', now, told);
  const { trunks: _gone, ...choices } = kestrelRise.choices;
  const broken = { ...kestrelRise, choices } as unknown as Job;
  plans.soon(broken);
  vi.runAllTimers();
  await vi.waitFor(() => expect(told).toHaveBeenCalledOnce());
  expect(plans.answer(broken)).toBeUndefined();
});

test('a long job is left to its page, and a closed server begins nothing', async () => {
  const plans = plansAtHand('one', now, loud);
  const long = renamed('x'.repeat(100_001));
  plans.soon(long);
  plans.soon({ ...kestrelRise, id: 'other' });
  plans.close();
  plans.soon(renamed('late'));
  vi.runAllTimers();
  for (let n = 0; n < 20; n++) await new Promise(setImmediate);
  for (const job of [long, { ...kestrelRise, id: 'other' }, renamed('late')]) expect(plans.answer(job)).toBeUndefined();
});
