import { type Job, writeJob } from '@eaveline/job';

/** Longer than anybody drags. */
const HELD_MS = 60_000;

/** Lets a job be pulled off the page as a file, where the browser can do that. */
export function pullOut(data: DataTransfer, job: Job): void {
  const address = URL.createObjectURL(new Blob([writeJob(job)], { type: 'application/json' }));
  data.setData('DownloadURL', `application/json:${job.id}.job.json:${address}`);
  setTimeout(() => URL.revokeObjectURL(address), HELD_MS);
}
