import { demoJobs, type Job, parseJob } from '@eaveline/job';
import type { Problem, Validated } from '@eaveline/server';

/** `iec-eu/gb`, `us`: the rule pack a job is judged by, with its variant where that says more. */
function regionOf({ choices: { rules } }: Job): string {
  return rules.variant === rules.pack ? rules.pack : `${rules.pack}/${rules.variant}`;
}

/**
 * Judges a whole job document the way a job file is judged when it is opened: every problem at once,
 * older versions lifted, unknown fields kept.
 */
export function validateJob(document: unknown): Validated {
  // through text, because that is what parseJob opens and what the store will hold; undefined has no text
  const { job, remarks } = parseJob(JSON.stringify(document) ?? '');
  if (job !== undefined) return { ok: true, id: job.id, name: job.name, region: regionOf(job), document: job };
  const stops = remarks.filter(({ severity }) => severity === 'stop');
  const problems = stops.map(({ at, found, wanted, mend }): Problem => ({ at, found, wanted, mend }));
  return { ok: false, problems };
}

/** The invented jobs that a new book begins with. */
export const firstJobs = (): readonly unknown[] => demoJobs;
