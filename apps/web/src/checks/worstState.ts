import type { Finding } from '@eaveline/plan';

const ORDER = ['fails', 'ask', 'meets'] as const;

/** How the worst of some findings stands; undefined where there are none. */
export function worstState(findings: readonly Pick<Finding, 'state'>[]): Finding['state'] | undefined {
  return ORDER.find((state) => findings.some((finding) => finding.state === state));
}
