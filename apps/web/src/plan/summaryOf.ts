import type { Plan } from '@eaveline/plan';
import type { PlanSummary } from './message.ts';

/** What the Book shows of a plan. */
export function summaryOf(plan: Plan): PlanSummary {
  const { findings, tally } = plan.checks;
  const first = findings.find(({ state }) => state !== 'meets');
  const about = { jobId: plan.jobId, tally, modules: plan.array.modules.length, days: plan.day.days };
  if (first === undefined) return about;
  const { title, state, stops } = first;
  return { ...about, first: { title, state, stops } };
}
