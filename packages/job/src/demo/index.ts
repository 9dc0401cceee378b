import type { Job } from '../schema/job.ts';
import { ironbarkClinic } from './ironbarkClinic.ts';
import { kestrelRise } from './kestrelRise/index.ts';
import { larkspurLane } from './larkspurLane.ts';
import { practiceYard } from './practiceYard/index.ts';
import { quaysideTerrace } from './quaysideTerrace.ts';

export { ironbarkClinic } from './ironbarkClinic.ts';
export { kestrelRise } from './kestrelRise/index.ts';
export { larkspurLane } from './larkspurLane.ts';
export { type PracticeFault, practiceYard, practiceYardFaults } from './practiceYard/index.ts';
export { quaysideTerrace } from './quaysideTerrace.ts';

/** The jobs the product ships with. Everything in them is invented. */
export const demoJobs: readonly Job[] = [kestrelRise, larkspurLane, quaysideTerrace, ironbarkClinic, practiceYard];
