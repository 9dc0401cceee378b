import { type Job, type JobRemark, parseJob, remarkLine } from '@eaveline/job';

/** A document read as strictly as a job file, or what stops it. */
export type Parsed =
  | { readonly job: Job; readonly stops: readonly [] }
  | { readonly job: undefined; readonly stops: readonly JobRemark[] };

export function parsed(document: unknown): Parsed {
  const { job, remarks } = parseJob(JSON.stringify(document ?? null));
  if (job !== undefined) return { job, stops: [] };
  return { job: undefined, stops: remarks.filter(({ severity }) => severity === 'stop') };
}

export function stopLines({ stops }: Parsed): string[] {
  return stops.map(remarkLine);
}
