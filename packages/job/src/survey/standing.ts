import type { Provenance } from '../schema/facts.ts';
import type { Job } from '../schema/job.ts';
import type { ThingList, WantedPhoto } from './question.ts';
import { type Asked, factAt, thingsAt } from './steps.ts';

/** How one question stands. */
export type AskedStanding =
  /** There is a value; who, when and with what, where somebody was named. */
  | { readonly kind: 'answered'; readonly value: unknown; readonly seen: Provenance | undefined }
  /** The region brought the value and nobody has looked yet. */
  | { readonly kind: 'assumed'; readonly value: unknown }
  /** Closed without a value: why, and by whom. */
  | { readonly kind: 'not measured'; readonly why: string; readonly seen: Provenance }
  | { readonly kind: 'open' };

/** While a job is in survey a value that only the region brought is not taken for seen. */
export const surveying = (job: Pick<Job, 'state'>) => job.state === 'survey';

/** Who found a fact, when, with what. */
export function seenAt({ facts }: Job, path: string): Provenance | undefined {
  return Object.hasOwn(facts.provenance, path) ? facts.provenance[path] : undefined;
}

export function standingOf(job: Job, asked: Pick<Asked, 'path' | 'assumed'>): AskedStanding {
  const value = factAt(job, asked.path);
  const seen = seenAt(job, asked.path);
  if (value !== undefined) {
    return asked.assumed && surveying(job) && seen === undefined
      ? { kind: 'assumed', value }
      : { kind: 'answered', value, seen };
  }
  if (seen?.notMeasured !== undefined) return { kind: 'not measured', why: seen.notMeasured, seen };
  return { kind: 'open' };
}

/** Whether anybody looked for things of this sort: there is one, or somebody said that there is none. */
export function lookedFor(job: Job, list: Pick<ThingList, 'at'>): boolean {
  return Object.keys(thingsAt(job, list.at)).length > 0 || seenAt(job, list.at) !== undefined;
}

/** Whether the photograph was taken, or somebody said why it could not be. */
export function photoStands(job: Job, photo: WantedPhoto): boolean {
  const seen = seenAt(job, photo.of);
  return seen?.photo !== undefined || seenAt(job, photoReason(photo.of)) !== undefined;
}

/** Where it is kept why a photograph could not be taken: a photograph is no fact, so it stands beside them. */
export const photoReason = (of: string) => `${of}.photo`;
