import type { Job } from '@eaveline/job';
import type { Plan } from '@eaveline/plan';
import type { PlanDesk } from '../plan/planDesk.ts';
import { wordsOf } from './keeping.ts';

export interface PlanningParts {
  readonly desk: PlanDesk;
  /** The job as it stands when the desk is free; undefined where none is open. */
  readonly job: () => Job | undefined;
  readonly onPlan: (plan: Plan, stale: boolean) => void;
  readonly onFallenOver: (words: string) => void;
}

/** Has the plan of the newest job worked out: one at a time, and never a queue of jobs nobody looks at any more. */
export function makePlanning({ desk, job, onPlan, onFallenOver }: PlanningParts): () => Promise<void> {
  let planning = false;
  let again = false;
  return async function workOut() {
    if (planning) {
      again = true;
      return;
    }
    planning = true;
    do {
      again = false;
      const newest = job();
      if (newest === undefined) break;
      try {
        const { plan } = await desk.workOut(newest);
        onPlan(plan, again);
      } catch (error) {
        onFallenOver(wordsOf(error));
      }
    } while (again);
    planning = false;
  };
}
