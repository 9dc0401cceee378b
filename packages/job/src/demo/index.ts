import type { Job } from '../schema/job.ts';
import { kestrelRise } from './kestrelRise/index.ts';

export { kestrelRise } from './kestrelRise/index.ts';

/** The jobs the product ships with. Everything in them is invented. */
export const demoJobs: readonly Job[] = [kestrelRise];
