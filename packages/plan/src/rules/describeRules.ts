import type { Seen } from '../finding.ts';
import type { Limit, RulePack } from './pack.ts';
import type { RuleId } from './ruleLimits.ts';

/** One rule of a pack in words: for a page of rules, and for counting. */
export interface RuleInWords {
  readonly rule: RuleId;
  readonly limit: string;
  readonly clause: string;
  readonly document: string;
  readonly edition: string;
  readonly seen: Seen;
  readonly note?: string;
}

/** Every rule of a pack with its limit, clause, edition and how it is known, in the order of the pack. */
export function describeRules(pack: RulePack): readonly RuleInWords[] {
  return (Object.entries(pack.rules) as [RuleId, Limit<unknown>][]).map(([rule, limit]) => ({
    rule,
    limit: inWords(limit.value),
    clause: limit.clause,
    document: limit.document,
    edition: pack.editions[limit.document] ?? '',
    seen: limit.seen,
    ...(limit.note === undefined ? {} : { note: limit.note }),
  }));
}

function inWords(value: unknown): string {
  if (typeof value === 'string') return value;
  if (typeof value === 'number') return String(Number(value.toPrecision(4)));
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  if (Array.isArray(value)) return value.map(inWords).join(', ');
  if (typeof value === 'object' && value !== null) {
    return Object.entries(value)
      .map(([name, part]) => `${name}: ${inWords(part)}`)
      .join(', ');
  }
  throw new Error(`a limit holds ${typeof value}, which has no words`);
}
