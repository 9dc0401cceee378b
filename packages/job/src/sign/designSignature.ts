import type { Job } from '../schema/job.ts';
import { changedParts, designBasis } from './designBasis.ts';

/** The signature that stands for the design, and whether the design is still the one it was put to. */
export interface DesignSignature {
  readonly id: string;
  readonly name: string;
  readonly licence?: string;
  /** Civil date at the site, `2026-05-12`. */
  readonly on: string;
  /** `earlier`: signed for another design. `not said`: the record does not say for which. */
  readonly of: 'this design' | 'earlier' | 'not said';
  /** `choices.trunks`: parts changed since, as far as the record tells. */
  readonly changed: readonly string[];
}

/** What a signature of the design is of. */
export const DESIGN = 'design';

/** The latest signature of the design that no later record sets aside; undefined where nobody has signed it. */
export function designSignature(job: Job): DesignSignature | undefined {
  const all = Object.entries(job.records.signatures);
  const superseded = new Set(all.map(([, { supersedes }]) => supersedes));
  const [standing] = all
    .filter(([id, { of }]) => of === DESIGN && !superseded.has(id))
    .sort(([, a], [, b]) => Date.parse(b.at) - Date.parse(a.at));
  if (standing === undefined) return undefined;
  const [id, { name, licence, at, basis, basisParts }] = standing;
  const now = designBasis(job);
  return {
    id,
    name,
    ...(licence === undefined ? {} : { licence }),
    on: civilDay(at, job.facts.site.zone),
    of: basis === undefined ? 'not said' : basis === now.digest ? 'this design' : 'earlier',
    changed: basis === now.digest || basisParts === undefined ? [] : changedParts(basisParts, now.parts),
  };
}

/** The day on the civil clock of a zone. */
function civilDay(instant: string, timeZone: string): string {
  const format = new Intl.DateTimeFormat('en', { timeZone, year: 'numeric', month: '2-digit', day: '2-digit' });
  const of = Object.fromEntries(format.formatToParts(new Date(instant)).map(({ type, value }) => [type, value]));
  return `${of.year}-${of.month}-${of.day}`;
}

const MONTHS = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec'];

/** A signature for the cell of a title block: who, and when or that it was for another design. */
export function signedWords(signature: DesignSignature | undefined): { readonly who: string; readonly when: string } {
  if (signature === undefined) return { who: 'not signed', when: '' };
  const { name, on, of } = signature;
  const [year, month, day] = on.split('-');
  const when = `${Number(day)} ${MONTHS[Number(month) - 1]} ${year}`;
  return {
    who: name,
    when: of === 'this design' ? when : of === 'earlier' ? 'for an earlier design' : `${when}, design not said`,
  };
}
