import type { Job } from '@eaveline/job';
import { type Plan, planOfParts, type StageAhead, type StageName } from '@eaveline/plan';
import { begunPlan } from './begunPlan.ts';
import { keepFew } from './keepFew.ts';
import type { PlanParts } from './message.ts';
import type { PlanSoFar } from './planSoFar.ts';

interface Known {
  readonly job: Job;
  readonly parts: PlanParts;
  /** True once every stage has been handed over. */
  readonly whole: boolean;
  readonly fresh: ReadonlySet<StageName>;
  readonly progress: StageAhead | undefined;
}

const NONE: ReadonlySet<StageName> = new Set();

function soFar({ job, parts, whole, fresh, progress }: Known): PlanSoFar {
  if (!whole) return { job, plan: undefined, begun: begunPlan(job, parts), fresh, progress };
  const plan = planOfParts(job, parts as Pick<Plan, StageName>);
  return { job, plan, begun: undefined, fresh, progress };
}

/** What the page knows of the last few plans, put together from the parts it was handed. */
export interface KnownPlans {
  has(jobId: string): boolean;
  get(jobId: string): PlanSoFar | undefined;
  /** A new state of the job: nothing known is of it yet. */
  begin(job: Job): void;
  /** More of the plan of the state that was begun last; `ahead` is undefined when it is whole. */
  take(jobId: string, parts: PlanParts, fresh: readonly StageName[], ahead: StageAhead | undefined): void;
  /** Work on it ended before its end. */
  leave(jobId: string): void;
}

export function knownPlans(): KnownPlans {
  const plans = new Map<string, Known>();
  return {
    has: (jobId) => plans.has(jobId),
    get(jobId) {
      const known = plans.get(jobId);
      return known && soFar(known);
    },
    begin(job) {
      const { parts = {}, whole = false } = plans.get(job.id) ?? {};
      keepFew(plans, job.id, { job, parts, whole, fresh: NONE, progress: undefined });
    },
    take(jobId, parts, fresh, ahead) {
      const known = plans.get(jobId);
      if (known === undefined) throw new Error(`Parts of a plan nobody asked for: ${jobId}`);
      const whole = known.whole || ahead === undefined;
      plans.set(jobId, {
        ...known,
        parts: { ...known.parts, ...parts },
        whole,
        fresh: new Set(fresh),
        progress: ahead,
      });
    },
    leave(jobId) {
      const known = plans.get(jobId);
      if (known !== undefined) plans.set(jobId, { ...known, progress: undefined });
    },
  };
}
