import { type Job, kestrelRise } from '@eaveline/job';
import { type Plan, stageNames } from '@eaveline/plan';
import { expect, test } from 'vitest';
import type { PlanDesk, PlanSoFar, WorkedOut } from '../plan/planDesk.ts';
import { makePlanning, NOT_PLANNED, type Planned } from './planning.ts';

const EARLIER = new Date('2026-05-12T07:00:00Z');
const kept = { jobId: kestrelRise.id, jobName: 'as kept' } as Plan;
const anew = { jobId: kestrelRise.id, jobName: 'worked out anew' } as Plan;

/** A desk whose engine takes as long as the test says, and whose device had this plan at hand for one state of a job, once it was `found`. */
function page(atHandFor: Job, found: Promise<unknown> = Promise.resolve()) {
  let waiting: (() => void)[] = [];
  let job = kestrelRise;
  let planned: Planned = NOT_PLANNED;
  const asked: Job[] = [];
  let part: (soFar: PlanSoFar) => void = () => {};
  let done: (all: WorkedOut) => void = () => {};
  const desk = {
    atHand: (of: Job) => found.then(() => (of === atHandFor ? { plan: kept, at: EARLIER } : undefined)),
    workOut: (of: Job, { onPart }: { onPart: (soFar: PlanSoFar) => void }) => {
      asked.push(of);
      part = onPart;
      return new Promise<WorkedOut>((resolve) => {
        done = resolve;
      });
    },
  } as unknown as PlanDesk;
  const workOut = makePlanning({
    ...{ desk, now: () => new Date('2026-05-12T09:00:00Z') },
    later: (call) => void waiting.push(call),
    job: () => job,
    onPlanned: (more) => {
      planned = { ...planned, ...more };
    },
  });
  return {
    workOut,
    planned: () => planned,
    asked: () => asked,
    become: (next: Job) => {
      job = next;
    },
    /** All that waits for its time is called. */
    async lapse() {
      const due = waiting;
      waiting = [];
      for (const call of due) call();
      await turn();
    },
    part: (soFar: PlanSoFar) => part(soFar),
    done: (all: WorkedOut) => done(all),
  };
}

const turn = () => new Promise((later) => setImmediate(later));
const begun = { plan: undefined, begun: undefined, progress: { stage: 'roof', done: 2, of: 13 } } as const;

test('the plan at hand stands whole until the engine has been over it', async () => {
  const { workOut, planned, part, done, asked, lapse } = page(kestrelRise);
  const working = workOut();
  await turn();
  expect(planned()).toMatchObject({ plan: kept, planOf: kestrelRise, stale: false, workedOutAt: EARLIER });
  expect([...planned().fresh]).toEqual(stageNames);
  // the page is drawn first
  expect(asked()).toEqual([]);
  await lapse();
  expect(asked()).toEqual([kestrelRise]);
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

test('where nothing is at hand the engine begins at once, and for later states it never waits', async () => {
  const edited = { ...kestrelRise, name: 'Kestrel' };
  const { workOut, become, asked } = page(edited);
  void workOut();
  await turn();
  expect(asked()).toEqual([kestrelRise]);
  become(edited);
  void workOut();
  expect(asked()).toEqual([kestrelRise, edited]);
});

test('an engine that is quicker than the device has the last word', async () => {
  let find: (value: undefined) => void = () => {};
  const found = new Promise<undefined>((resolve) => {
    find = resolve;
  });
  const { workOut, planned, done, lapse } = page(kestrelRise, found);
  const working = workOut();
  await lapse();
  done({ job: kestrelRise, plan: anew, begun: undefined, fresh: new Set(stageNames), progress: undefined, tookMs: 1 });
  await working;
  find(undefined);
  await turn();
  expect(planned().plan).toBe(anew);
});
