import type { Job } from '@eaveline/job';
import type { Plan, StageName } from './plan.ts';
import { stageNames } from './stageNames.ts';

/** The plan of a job from its thirteen parts. They stand in the order of the road, whichever was walked to first. */
export function planOfParts({ id, name, invented }: Job, parts: Pick<Plan, StageName>): Plan {
  const inOrder = Object.fromEntries(stageNames.map((stage) => [stage, parts[stage]]));
  return { jobId: id, jobName: name, invented, ...(inOrder as unknown as Pick<Plan, StageName>) };
}
