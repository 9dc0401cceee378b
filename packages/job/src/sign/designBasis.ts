import type { Job } from '../schema/job.ts';
import { fnv1a64 } from './fnv1a64.ts';

/** What a signature stands on: the design as it was, as a digest of the whole and of each part. */
export interface DesignBasis {
  /** 16 hexadecimal digits. */
  readonly digest: string;
  /** `choices.trunks` → 16 hexadecimal digits: tells which parts of the design have changed since. */
  readonly parts: Readonly<Record<string, string>>;
}

/**
 * Parts that say nothing of what is built: who found a fact, who comes on which day, whose word stands behind a
 * limit. A change of these asks for no new signature.
 */
const NO_DESIGN: readonly string[] = [
  'facts.provenance',
  'facts.surveyClosed',
  'choices.crew',
  'choices.day',
  'choices.confirmations',
];

/**
 * The design of a job, its facts and choices, as a digest: two jobs that would be built alike have the same.
 *
 * Each part (`facts.roof`, `choices.trunks`) is written as JSON with its keys in alphabetical order, without what is
 * not set and without empty groups, and hashed with FNV-1a of 64 bits; the whole is the hash of the parts. The order
 * in which fields were set does not show. It notices a change; it is no proof of who signed.
 */
export function designBasis({ facts, choices }: Pick<Job, 'facts' | 'choices'>): DesignBasis {
  const parts: Record<string, string> = {};
  for (const [section, group] of Object.entries({ choices, facts })) {
    for (const [name, part] of Object.entries(group).sort(byKey)) {
      const path = `${section}.${name}`;
      const text = NO_DESIGN.includes(path) ? undefined : stableJson(part);
      if (text !== undefined) parts[path] = fnv1a64(text);
    }
  }
  return { digest: fnv1a64(stableJson(parts) ?? ''), parts };
}

/** The digest alone, 16 hexadecimal digits. */
export function designDigest(job: Pick<Job, 'facts' | 'choices'>): string {
  return designBasis(job).digest;
}

/** Paths of the parts in which two designs differ, in alphabetical order. */
export function changedParts(before: DesignBasis['parts'], now: DesignBasis['parts']): readonly string[] {
  const all = new Set([...Object.keys(before), ...Object.keys(now)]);
  return [...all].filter((path) => before[path] !== now[path]).sort();
}

const byKey = ([a]: readonly [string, unknown], [b]: readonly [string, unknown]) => (a < b ? -1 : 1);

/** JSON with keys in order; undefined for what is not set and for a group with nothing in it. */
function stableJson(value: unknown): string | undefined {
  if (Array.isArray(value)) return `[${value.map((each) => stableJson(each) ?? 'null').join(',')}]`;
  if (typeof value !== 'object' || value === null) return JSON.stringify(value);
  const fields = Object.entries(value)
    .sort(byKey)
    .flatMap(([key, inner]) => {
      const text = stableJson(inner);
      return text === undefined ? [] : [`${JSON.stringify(key)}:${text}`];
    });
  return fields.length === 0 ? undefined : `{${fields.join(',')}}`;
}
