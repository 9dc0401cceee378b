import type { Job, Provenance } from '@eaveline/job';
import type { SurveyStanding } from '@eaveline/plan';

/** A fact that was found, or found again, after the survey was closed. */
export interface ChangedFact {
  readonly path: string;
  readonly what: string;
  readonly step: string;
  readonly seen: Provenance;
}

/** Facts whose own hour is later than the closing of the survey, the newest first; none while it is open. */
export function changedSince(
  { facts: { surveyClosed, provenance } }: Pick<Job, 'facts'>,
  { steps }: Pick<SurveyStanding, 'steps'>,
): ChangedFact[] {
  if (surveyClosed === undefined) return [];
  const closed = Date.parse(surveyClosed.at);
  return steps
    .flatMap(({ id, asks }) =>
      asks.flatMap(({ path, ask, of }) => {
        const seen = Object.hasOwn(provenance, path) ? provenance[path] : undefined;
        if (seen === undefined || Date.parse(seen.at) <= closed) return [];
        return [{ path, step: id, seen, what: of === '' ? ask : `${of}: ${ask}` }];
      }),
    )
    .sort((a, b) => Date.parse(b.seen.at) - Date.parse(a.seen.at));
}
