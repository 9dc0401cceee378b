import type { Job } from '@eaveline/job';
import { type Plan, type StageName, stageNames } from '@eaveline/plan';
import type { PlanParts } from './message.ts';

/** A plan on its first walk along the road: the stages it has come past. */
export interface BegunPlan {
  /** Reading a stage that is still ahead throws {@link StageStillAhead}. */
  readonly plan: Plan;
  readonly has: ReadonlySet<StageName>;
}

/** Thrown where a stage is read that has not been worked out yet. */
export class StageStillAhead extends Error {
  override readonly name = 'StageStillAhead';

  constructor(stage: StageName) {
    super(`The stage ${stage} was read before it was worked out`);
  }
}

export function begunPlan({ id, name, invented }: Job, parts: PlanParts): BegunPlan {
  const has = new Set(stageNames.filter((stage) => parts[stage] !== undefined));
  const plan = { jobId: id, jobName: name, invented, ...parts };
  for (const stage of stageNames) {
    if (has.has(stage)) continue;
    Object.defineProperty(plan, stage, {
      get() {
        throw new StageStillAhead(stage);
      },
    });
  }
  return { plan: plan as Plan, has };
}
