import type { Job } from '@eaveline/job';
import type { Plan } from '@eaveline/plan';
import { nextHold } from '../book/nextHold.ts';
import type { PlanSummary } from './message.ts';

/** What the Book shows of a plan. */
export function summaryOf(plan: Plan, job: Job): PlanSummary {
  const { findings, tally } = plan.checks;
  const first = findings.find(({ state }) => state !== 'meets');
  const hold = nextHold(plan, job);
  const recorded = new Set(Object.values(job.records.serials).map(({ of }) => of));
  const places = plan.array.modules.filter(({ unitId }) => recorded.has(unitId));
  return {
    jobId: plan.jobId,
    tally,
    modules: plan.array.modules.length,
    days: plan.day.days,
    ...(first === undefined ? {} : { first: { title: first.title, state: first.state, stops: first.stops } }),
    ...(hold === undefined ? {} : { nextHold: hold }),
    ...(places.length === 0
      ? {}
      : { unitPlaces: Object.fromEntries(places.map(({ unitId, name }) => [unitId, name])) }),
  };
}
