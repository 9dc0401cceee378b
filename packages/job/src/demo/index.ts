import type { Job } from '../schema/job.ts';
import { ironbarkClinic } from './ironbarkClinic/index.ts';
import { kestrelRise } from './kestrelRise/index.ts';
import { larkspurLane } from './larkspurLane/index.ts';
import { practiceYard } from './practiceYard/index.ts';
import { quaysideTerrace } from './quaysideTerrace/index.ts';

export { ironbarkClinic } from './ironbarkClinic/index.ts';
export { kestrelRise } from './kestrelRise/index.ts';
export { larkspurLane } from './larkspurLane/index.ts';
export { type PracticeFault, practiceYard, practiceYardFaults } from './practiceYard/index.ts';
export { quaysideTerrace } from './quaysideTerrace/index.ts';

/** The jobs the product ships with. Everything in them is invented. */
export const demoJobs: readonly Job[] = [kestrelRise, larkspurLane, quaysideTerrace, ironbarkClinic, practiceYard];
