import type { Job } from '@eaveline/job';
import type { PlanInputs, StageName, WorkedPlan } from './plan.ts';

/**
 * One stage of the road.
 *
 * A stage never sees the whole job: `view` picks out the parts it depends on, `run` gets that and nothing else, so
 * a part it did not pick cannot make its answer stale. Two views that read alike as JSON give the same answer.
 */
export interface Stage<N extends StageName, B extends StageName, V> {
  readonly name: N;
  /** Stages whose answers it uses; all of them stand earlier on the road. */
  readonly before: readonly B[];
  view(job: Job): V;
  run(view: V, before: Pick<WorkedPlan, B>, inputs: PlanInputs): WorkedPlan[N];
}
