import { type Job, type JobRemark, parseJob } from '@eaveline/job';
import type { Change } from '@eaveline/plan';
import { withValueAt } from './path.ts';

/** What became of a change: the job with it, or why it was not taken. */
export type Changed = { readonly job: Job } | { readonly refusal: JobRemark };

/**
 * The job with some changes in it, read as strictly as a job file: nothing that could not be opened again is kept.
 *
 * The first remark that stops it is given back; the job then stays as it was.
 */
export function changeJob(job: Job, changes: readonly Change[]): Changed {
  const changed = changes.reduce<unknown>((document, { path, value }) => withValueAt(document, path, value), job);
  const { job: read, remarks } = parseJob(JSON.stringify(changed));
  if (read !== undefined) return { job: read };
  const stop = remarks.find(({ severity }) => severity === 'stop');
  if (stop === undefined) throw new Error('A job was not read, and no remark says why');
  return { refusal: stop };
}

/** Why a value was not taken, in one breath: what it is, what it has to be, the way out. */
export function refusalWords({ found, wanted, mend }: JobRemark): string {
  return `${found.charAt(0).toUpperCase()}${found.slice(1)} cannot be: it has to be ${wanted}. ${mend}`;
}
