import type { Job } from '@eaveline/job';
import type { Change } from '@eaveline/plan';

/** Closing the survey as one step: who and when, and a job that was in survey goes on to design. */
export function closingOf(job: Pick<Job, 'state'>, by: string, at: Date): Change[] {
  return [
    { path: ['facts', 'surveyClosed'], value: { by, at: at.toISOString() } },
    ...(job.state === 'survey' ? [{ path: ['state'], value: 'design' }] : []),
  ];
}
