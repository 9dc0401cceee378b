import { type Job, writeJob } from '@eaveline/job';

/** Long enough for any browser to have begun the download. */
const HELD_MS = 60_000;

/** Hands a text to the person as a file. */
export function saveText(fileName: string, text: string): void {
  const address = URL.createObjectURL(new Blob([text], { type: 'application/json' }));
  const link = document.createElement('a');
  link.href = address;
  link.download = fileName;
  link.click();
  setTimeout(() => URL.revokeObjectURL(address), HELD_MS);
}

export function jobFileName({ id }: Pick<Job, 'id'>): string {
  return `${id}.job.json`;
}

/** The whole job as one file: what was decided, measured and recorded, and nothing that can be worked out from it. */
export function saveJobFile(job: Job): void {
  saveText(jobFileName(job), writeJob(job));
}

/** Lets a job be pulled off the page as a file, where the browser can do that. */
export function pullOut(data: DataTransfer, job: Job): void {
  const address = URL.createObjectURL(new Blob([writeJob(job)], { type: 'application/json' }));
  data.setData('DownloadURL', `application/json:${jobFileName(job)}:${address}`);
  setTimeout(() => URL.revokeObjectURL(address), HELD_MS);
}
