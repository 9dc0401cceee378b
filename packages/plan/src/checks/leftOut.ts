import type { Finding } from '../finding.ts';
import type { RulePack } from '../rules/pack.ts';
import type { ChecksPlan } from './types.ts';

/** Limits from memory that stand behind a `meets`, each once for its clause and edition. */
export function unconfirmedOf(findings: readonly Finding[]): ChecksPlan['unconfirmed'] {
  const open = new Map<string, ChecksPlan['unconfirmed'][number]>();
  for (const { rule, clause, edition, unconfirmed } of findings) {
    if (unconfirmed) open.set(`${rule}|${clause}|${edition}`, { rule, clause, edition });
  }
  return [...open.values()];
}

/** What the checks of a region leave out: rules it has no text for, and what was not found out about its texts. */
export function leftOut(pack: RulePack): readonly string[] {
  return [
    ...pack.lacks.map(({ rule, why }) => `${rule}: not judged here. ${why}`),
    ...pack.unsettled,
    'The maker’s instructions for the thing in hand stand beside every rule, and the stricter holds.',
    'What is seen only on site is not judged here: torque, seals, labels in place, room to work.',
  ];
}
