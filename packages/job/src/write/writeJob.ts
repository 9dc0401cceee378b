import { type Job, jobSchema } from '../schema/job.ts';
import { inOrder } from './inOrder.ts';

/**
 * A job as text: JSON, two spaces, a line break at the end.
 *
 * The same job gives the same text whatever order its fields were set in: known fields in the order of the
 * schema, ids and unknown fields in alphabetical order. Unknown fields are kept; values that are not set are left out.
 */
export function writeJob(job: Job): string {
  return `${JSON.stringify(inOrder(jobSchema, job), null, 2)}\n`;
}
