import { demoJobs, type Job, kestrelRise } from '@eaveline/job';
import { type Plan, planFigures, workOut } from '@eaveline/plan';
import { IDBFactory } from 'fake-indexeddb';
import { expect, test } from 'vitest';
import { keptPlans } from './keptPlans.ts';

const ENGINE = 'a9d41c0de2f7b365';

test('the plan of a job is at hand again, down to the last figure', async () => {
  const device = new IDBFactory();
  const plan = planFigures(workOut(kestrelRise));
  await keptPlans(ENGINE, device).keep(kestrelRise, plan);
  const found = await keptPlans(ENGINE, device).find(structuredClone(kestrelRise));
  expect(JSON.stringify(found?.plan)).toBe(JSON.stringify(plan));
  expect(found?.at).toBeInstanceOf(Date);
});

const plan = { jobId: kestrelRise.id } as Plan;

test('a job one letter apart has no plan at hand, nor has another engine', async () => {
  const device = new IDBFactory();
  const plans = keptPlans(ENGINE, device);
  await plans.keep(kestrelRise, plan);
  const longer: Job = structuredClone(kestrelRise);
  const { a } = longer.choices.trunks as Record<string, { homeRun: { lengthM: number } }>;
  if (a === undefined) throw new Error('Kestrel Rise has a trunk a');
  a.homeRun.lengthM += 0.001;
  expect(await plans.find(kestrelRise)).toMatchObject({ plan });
  expect(await plans.find(longer)).toBeUndefined();
  expect(await keptPlans('another', device).find(kestrelRise)).toBeUndefined();
});

test('what is forgotten is gone, and of many jobs the last twelve stay', async () => {
  const plans = keptPlans(ENGINE, new IDBFactory());
  await plans.keep(kestrelRise, plan);
  await plans.forget(kestrelRise.id);
  expect(await plans.find(kestrelRise)).toBeUndefined();

  const [any] = demoJobs as readonly [Job];
  const many = Array.from({ length: 14 }, (_, n): Job => ({ ...any, id: `job-${n}` }));
  for (const job of many) {
    await plans.keep(job, plan);
    await new Promise((later) => setTimeout(later, 2)); // the clock has to move for one to be older
  }
  const there = await Promise.all(many.map((job) => plans.find(job)));
  expect(there.map((found) => found !== undefined)).toEqual([false, false, ...Array(12).fill(true)]);
});

test('without a database, or with one that fails, the plan is worked out as ever', async () => {
  const none = keptPlans(ENGINE, undefined);
  await none.keep(kestrelRise, plan);
  expect(await none.find(kestrelRise)).toBeUndefined();
  const broken = {
    open() {
      throw new DOMException('The operation is insecure.', 'SecurityError');
    },
  } as unknown as IDBFactory;
  await keptPlans(ENGINE, broken).keep(kestrelRise, plan);
  expect(await keptPlans(ENGINE, broken).find(kestrelRise)).toBeUndefined();
});
