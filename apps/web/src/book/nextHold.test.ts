import { type Job, kestrelRise } from '@eaveline/job';
import { createPlanner } from '@eaveline/plan';
import { expect, test } from 'vitest';
import { nextHold } from './nextHold.ts';

const at = '2026-05-15T06:10:00Z';
const planOf = createPlanner();
const plan = planOf(kestrelRise);
const deadTrunks = plan.day.tasks.filter(({ id }) => id.startsWith('deadTrunk:'));

/** Kestrel Rise with some records; the plan is worked out again, because its tests read them. */
function holdWith(change: (job: Job) => void) {
  const job = structuredClone(kestrelRise);
  change(job);
  return nextHold(planOf(job), job);
}
const sign = (job: Job, ...tasks: string[]) => {
  for (const [n, id] of tasks.entries())
    job.records.signatures[`s${n}`] = { at, by: 'Nia', of: `hold:${id}`, name: 'Nia' };
};

test('before anything is on record the first hold point of the day comes next', () => {
  const first = plan.day.tasks
    .filter(({ hold }) => hold !== undefined)
    .sort((a, b) => (a.day ?? 0) * 100 + (a.startH ?? 0) - ((b.day ?? 0) * 100 + (b.startH ?? 0)))[0];
  expect(nextHold(plan, kestrelRise)?.taskId).toBe(first?.id);
});

test('a job whose survey is still walked has no hold point yet', () => {
  expect(holdWith((job) => Object.assign(job, { state: 'survey' }))).toBeUndefined();
});

test('a hold point is passed by a signature, or by having been done before the first day', () => {
  const hold = holdWith((job) => {
    sign(job, 'isolate');
    job.choices.day.doneBefore = { edge: true };
  });
  expect(hold).toMatchObject({
    name: 'H3',
    words: expect.stringMatching(/^look in the attic, torque on one in ten, \w+ plane$/),
  });
});

test('a signature that was withdrawn passes nothing', () => {
  const hold = holdWith((job) => {
    sign(job, 'isolate', 'edge');
    job.records.signatures.off = { at, by: 'Nia', of: 'withdrawn', name: 'Nia', supersedes: 's1' };
  });
  expect(hold?.taskId).toBe('edge');
});

test('dead tests of a trunk that are read and hold pass it, and all that had to be passed before them', () => {
  const read = (value: number) =>
    holdWith((job) => {
      for (const { id } of deadTrunks) {
        const trunk = id.split(':')[1];
        const row = plan.tests.rows.find((each) => each.id === `caps:${trunk}`);
        if (row?.predicted === undefined) throw new Error('caps are counted for every trunk');
        const counted = row.predicted.value + value;
        job.records.readings[`caps-${trunk}`] = { at, by: 'Ode', test: row.id, value: counted, unit: '' };
      }
    });
  // all caps there: what is left is the whole board, not the attic
  expect(read(0)).toEqual({ name: 'H6', words: 'full dead tests, no energy before this', taskId: 'deadAll' });
  // one cap too few on each: nothing is passed by it
  expect(read(-1)?.taskId).toBe(nextHold(plan, kestrelRise)?.taskId);
});

test('a job that is tested has no hold point left', () => {
  const hold = holdWith((job) => {
    job.state = 'tested';
  });
  expect(hold).toBeUndefined();
});
