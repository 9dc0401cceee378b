import { kestrelRise } from '@eaveline/job';
import { planFigures, workOut } from '@eaveline/plan';
import { expect, test, vi } from 'vitest';
import { servedPlans } from './servedPlans.ts';

const ENGINE = 'a9d41c0de2f7b365';
const plan = planFigures(workOut(kestrelRise));
const served = { engine: ENGINE, job: kestrelRise, plan, at: '2026-05-12T07:00:00.000Z' };
const answer = (body: unknown) => vi.fn(async (_address: string) => Response.json(body));

test('the plan the server has at hand is the whole plan, with when it was worked out', async () => {
  const get = answer(served);
  const found = await servedPlans(ENGINE, get).find(structuredClone(kestrelRise));
  expect(get).toHaveBeenCalledExactlyOnceWith('/api/jobs/kestrel-rise/plan');
  expect(found).toEqual({ plan, at: new Date('2026-05-12T07:00:00Z') });
});

test('a plan of another state of the job or of another engine is not taken', async () => {
  expect(await servedPlans(ENGINE, answer(served)).find({ ...kestrelRise, name: 'Kestrel' })).toBeUndefined();
  expect(await servedPlans('another', answer(served)).find(kestrelRise)).toBeUndefined();
});

test('the server is asked once for each job: later states are of this page', async () => {
  const get = answer(served);
  const plans = servedPlans(ENGINE, get);
  await plans.find(kestrelRise);
  expect(await plans.find(kestrelRise)).toBeUndefined();
  expect(get).toHaveBeenCalledOnce();
});

test.each([
  ['none at hand', async () => new Response(null, { status: 204 })],
  ['no such job', async () => Response.json({ problems: [] }, { status: 404 })],
  ['cut short', async () => new Response('{"engine":"a9d4')],
  ['out of reach', async () => Promise.reject(new TypeError('Failed to fetch'))],
])('%s: nothing is shown for it', async (_, get) => {
  expect(await servedPlans(ENGINE, get).find(kestrelRise)).toBeUndefined();
});
