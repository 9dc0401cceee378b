import type { Job } from '@eaveline/job';

/** Where a job stands once work has begun: what had to be known before then is missing, no longer asked for. */
export const BEGUN: readonly Job['state'][] = ['on site', 'tested', 'handed over'];
