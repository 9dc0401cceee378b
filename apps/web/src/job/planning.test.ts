import { type Job, kestrelRise } from '@eaveline/job';
import { type Plan, stageNames } from '@eaveline/plan';
import { expect, test } from 'vitest';
import type { PlanDesk, PlanSoFar, WorkedOut } from '../plan/planDesk.ts';
import { makePlanning, NOT_PLANNED, type Planned } from './planning.ts';

const EARLIER = new Date('2026-05-12T07:00:00Z');
const kept = { jobId: kestrelRise.id, jobName: 'as kept' } as Plan;
const anew = { jobId: kestrelRise.id, jobName: 'worked out anew' } as Plan;

/** A desk whose engine takes as long as the test says, and whose device had this plan at hand for one state of a job. */
function page(atHandFor: Job) {
  let job = kestrelRise;
  let planned: Planned = NOT_PLANNED;
  let part: (soFar: PlanSoFar) => void = () => {};
  let done: (all: WorkedOut) => void = () => {};
  const desk = {
    atHand: async (of: Job) => (of === atHandFor ? { plan: kept, at: EARLIER } : undefined),
    workOut: (_of: Job, { onPart }: { onPart: (soFar: PlanSoFar) => void }) => {
      part = onPart;
      return new Promise<WorkedOut>((resolve) => {
        done = resolve;
      });
    },
  } as unknown as PlanDesk;
  const workOut = makePlanning({
    ...{ desk, now: () => new Date('2026-05-12T09:00:00Z') },
    job: () => job,
    onPlanned: (more) => {
      planned = { ...planned, ...more };
    },
  });
  return {
    workOut,
    planned: () => planned,
    become: (next: Job) => {
      job = next;
    },
    part: (soFar: PlanSoFar) => part(soFar),
    done: (all: WorkedOut) => done(all),
  };
}

const turn = () => new Promise((later) => setImmediate(later));
const begun = { plan: undefined, begun: undefined, progress: { stage: 'roof', done: 2, of: 13 } } as const;

test('the plan at hand stands whole until the engine has been over it', async () => {
  const { workOut, planned, part, done } = page(kestrelRise);
  const working = workOut();
  await turn();
  expect(planned()).toMatchObject({ plan: kept, planOf: kestrelRise, stale: false, workedOutAt: EARLIER });
  expect([...planned().fresh]).toEqual(stageNames);
  // what is under work is the same once more, and no news
  part({ ...begun, job: kestrelRise, fresh: new Set(['site', 'sun']) });
  expect(planned()).toMatchObject({ plan: kept, stale: false, progress: undefined });
  done({ job: kestrelRise, plan: anew, begun: undefined, fresh: new Set(stageNames), progress: undefined, tookMs: 9 });
  await working;
  expect(planned()).toMatchObject({ plan: anew, stale: false, workedOutAt: new Date('2026-05-12T09:00:00Z') });
});

test('a job edited while its plan at hand was looked for is not shown with it', async () => {
  const { workOut, planned, become } = page(kestrelRise);
  void workOut();
  become({ ...kestrelRise, name: 'Kestrel' });
  void workOut();
  await turn();
  expect(planned()).toMatchObject({ plan: undefined, stale: true });
});

test('after an edit the parts of its own plan are told as ever', async () => {
  const { workOut, planned, become, part } = page(kestrelRise);
  void workOut();
  await turn();
  const edited = { ...kestrelRise, name: 'Kestrel' };
  become(edited);
  void workOut();
  await turn();
  expect(planned()).toMatchObject({ plan: kept, stale: true });
  part({ ...begun, job: edited, fresh: new Set(['site']) });
  expect(planned()).toMatchObject({ planOf: edited, progress: begun.progress });
  expect([...planned().fresh]).toEqual(['site']);
});

test('an engine that is quicker than the device has the last word', async () => {
  const { workOut, planned, done } = page(kestrelRise);
  const working = workOut();
  done({ job: kestrelRise, plan: anew, begun: undefined, fresh: new Set(stageNames), progress: undefined, tookMs: 1 });
  await working;
  await turn();
  expect(planned().plan).toBe(anew);
});
