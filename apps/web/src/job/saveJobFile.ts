import { type Job, writeJob } from '@eaveline/job';
import { saveText } from './saveText.ts';

/** Hands the job to the browser as a file that opens anywhere. Says which, in words. */
export function saveJobFile(job: Job): string {
  const name = `${job.id}.job.json`;
  saveText(name, writeJob(job));
  return `${name} goes to the folder your browser saves to.`;
}
