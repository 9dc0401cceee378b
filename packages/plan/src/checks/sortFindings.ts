import type { Finding } from '../finding.ts';

/**
 * What stops the job first, then other fails, then what is asked, then what meets an unconfirmed limit, then the
 * rest. Within a group those nearest to their limits first; those without a figure last, in the order they came.
 */
export function sortFindings(findings: readonly Finding[]): readonly Finding[] {
  return findings
    .map((finding, k) => ({ finding, k, group: groupOf(finding), near: nearness(finding) }))
    .sort((a, b) => a.group - b.group || a.near - b.near || a.k - b.k)
    .map(({ finding }) => finding);
}

function groupOf({ state, stops, unconfirmed }: Finding): number {
  if (state === 'fails') return stops ? 0 : 1;
  if (state === 'ask') return stops ? 2 : 3;
  return unconfirmed ? 4 : 5;
}

/** Margin as a share of the limit: smaller is nearer, negative is over. */
function nearness({ margin, limit }: Finding): number {
  if (margin === undefined || limit === undefined) return Number.MAX_VALUE;
  return limit === 0 ? margin : margin / Math.abs(limit);
}
