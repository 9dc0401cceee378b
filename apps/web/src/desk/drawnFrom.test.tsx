import { readFileSync } from 'node:fs';
import { type Job, parseJob } from '@eaveline/job';
import { createPlanner, type Plan, type SheetNo, type StageName, workOut } from '@eaveline/plan';
import { createMemoryHistory, createRootRoute, createRouter, RouterContextProvider } from '@tanstack/react-router';
import { renderToString } from 'react-dom/server';
import { expect, test } from 'vitest';
import { JobContext } from '../job/JobContext.tsx';
import type { JobSession } from '../job/jobSession.ts';
import { begunPlan } from '../plan/begunPlan.ts';
import { SessionContext } from './SessionContext.tsx';
import { DRAWN_FROM, planFor } from './sheetStages.ts';
import { VIEWS } from './views.ts';

const jobs = ['kestrel-rise', 'ironbark-clinic', 'practice-yard'].map((name) => {
  const file = new URL(`../../../../examples/${name}.job.json`, import.meta.url);
  const { job } = parseJob(readFileSync(file, 'utf8'));
  if (job === undefined) throw new Error(`${name} does not read`);
  return { job, plan: workOut(job) };
});

const router = createRouter({ routeTree: createRootRoute(), history: createMemoryHistory() });
/** Nothing is edited here, and nobody listens. */
const session = { state: () => ({ kind: 'opening' }), subscribe: () => () => {} } as unknown as JobSession;

/** All that a sheet makes of a plan. */
function draw(no: SheetNo, plan: Plan, job: Job): string {
  const view = VIEWS[no];
  view.subjects(plan, job);
  view.first?.(plan);
  const desk = { job, edit: () => undefined, mend: () => {} };
  return renderToString(
    <RouterContextProvider router={router}>
      <SessionContext value={session}>
        <JobContext value={desk}>
          <p>{[view.head(plan, job).sentence, ...view.leavesOut(plan)].join(' ')}</p>
          <view.Body plan={plan} job={job} selected={undefined} onSelect={() => {}} />
        </JobContext>
      </SessionContext>
    </RouterContextProvider>,
  );
}

/** The plan as it stands when these stages have been walked to, without any that was left out. */
function walkedTo(job: Job, plan: Plan, wanted: readonly StageName[]) {
  const there = new Map<StageName, unknown>();
  const walk = createPlanner().walk(job, {}, (stage) => there.set(stage, plan[stage]), wanted);
  while (!wanted.every((stage) => there.has(stage))) walk.next();
  return there;
}

const NUMBERS = Object.keys(VIEWS) as SheetNo[];

test.each(NUMBERS)('sheet %s is drawn whole as soon as its stages are there', (no) => {
  for (const { job, plan } of jobs) {
    const begun = begunPlan(job, Object.fromEntries(walkedTo(job, plan, DRAWN_FROM[no])));
    const early = planFor(no, { plan: undefined, begun });
    if (early === undefined) throw new Error(`Sheet ${no} of ${job.id} still waits`);
    expect(draw(no, early, job)).toBe(draw(no, plan, job));
  }
});

test.each(NUMBERS)('sheet %s waits for no stage that it does not read', (no) => {
  for (const { job, plan } of jobs) {
    for (const stage of DRAWN_FROM[no]) {
      const there = walkedTo(job, plan, DRAWN_FROM[no]);
      there.delete(stage);
      const begun = begunPlan(job, Object.fromEntries(there));
      expect(planFor(no, { plan: undefined, begun })).toBeUndefined();
      expect(() => draw(no, begun.plan, job)).toThrow(`The stage ${stage} was read before it was worked out`);
    }
  }
});
