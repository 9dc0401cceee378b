import { type Job, type SurveyCaution, surveySteps } from '@eaveline/job';

/** Cautions of a place of the walk, for a thing that is not in the job yet. */
export function surveyCautionsOf(job: Job, part: string): readonly SurveyCaution[] {
  return surveySteps(job).find(({ id }) => id === part)?.cautions ?? [];
}
