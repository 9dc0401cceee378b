import type { Confirmation } from '@eaveline/job';
import type { Finding } from '../finding.ts';
import type { RuleId } from '../rules/ruleLimits.ts';
import { type CheckContext, editionName, editionOf } from './context.ts';

/** Words of licensed persons that stand behind no limit, each with the reason: a sentence for the reader. */
export function idleConfirmations(
  { choices, pack }: Pick<CheckContext, 'choices' | 'pack'>,
  findings: readonly Finding[],
): readonly string[] {
  const whyIdle = ({ rule, edition }: Confirmation): string | undefined => {
    const limit = pack.rules[rule as RuleId];
    if (limit === undefined) return `${pack.id}/${pack.variant} has no rule of that name`;
    const inForce = editionOf(choices.rules, pack, limit.document);
    const full = editionName(limit.document, inForce);
    // a rule may judge by other texts than its own: what its findings name counts too
    const named = findings.filter((finding) => finding.rule === rule).map((finding) => finding.edition);
    const known = [inForce, full, ...named];
    return known.includes(edition) || named.some((name) => name.endsWith(` ${edition}`))
      ? undefined
      : `the edition in force is ${full}`;
  };
  return Object.entries(choices.confirmations).flatMap(([id, word]) => {
    const why = whyIdle(word);
    return why === undefined
      ? []
      : [`Confirmation ${id} by ${word.by} (${word.rule}, edition ${word.edition}) counts for nothing: ${why}.`];
  });
}
