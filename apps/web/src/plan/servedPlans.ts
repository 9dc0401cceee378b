import type { Job } from '@eaveline/job';
import type { Plan } from '@eaveline/plan';
import type { KeptPlans } from './keptPlans.ts';

/** What the server answers where it has worked the job out. */
interface ServedPlan {
  readonly engine: string;
  readonly job: Job;
  readonly plan: Plan;
  readonly at: string;
}

/** The plan of a job as the server has it at hand, for a page that opens it for the first time. */
export type ServedPlans = Pick<KeptPlans, 'find'>;

/**
 * Asks the server once for each job: later states are of this page. Whatever does not come, or is of another state or
 * another engine, is no news for anybody: the plan is worked out as ever.
 *
 * @param engine  names this page's engine.
 */
export function servedPlans(engine: string, get: (address: string) => Promise<Response> = fetch): ServedPlans {
  const asked = new Set<string>();
  return {
    async find(job) {
      if (asked.has(job.id)) return undefined;
      asked.add(job.id);
      try {
        const response = await get(`/api/jobs/${encodeURIComponent(job.id)}/plan`);
        if (response.status !== 200) return undefined;
        const served = (await response.json()) as ServedPlan;
        const same = served.engine === engine && JSON.stringify(served.job) === JSON.stringify(job);
        return same ? { plan: served.plan, at: new Date(served.at) } : undefined;
      } catch {
        return undefined;
      }
    },
  };
}
