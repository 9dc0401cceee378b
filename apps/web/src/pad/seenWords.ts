import type { Finding, Seen } from '@eaveline/plan';

const SEEN: Readonly<Record<Seen, string>> = {
  'public text': 'Seen in a public text; confirm against the current edition.',
  memory: 'From memory: not yet checked against a text. Read it before you rely on it.',
  'equipment sheet': 'From the equipment sheet.',
  'network letter': "From the network's letter.",
  job: 'From the job.',
  practice: 'Common practice, no source.',
};

/** How the limit behind a finding is known, and what is to be done about it. */
export function seenWords({ seen, state, unconfirmed }: Pick<Finding, 'seen' | 'state' | 'unconfirmed'>): string {
  if (seen === 'memory' && state === 'meets' && !unconfirmed) return 'From memory, and confirmed for this edition.';
  return SEEN[seen];
}
