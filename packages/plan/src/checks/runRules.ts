import type { Finding } from '../finding.ts';
import type { Limit } from '../rules/pack.ts';
import type { RuleId, RuleLimits } from '../rules/ruleLimits.ts';
import type { CheckContext } from './context.ts';
import { finding } from './finding.ts';
import type { Rule } from './rule.ts';

/** A rule whose limit's type is rubbed off, so that unlike rules can stand in one list. */
export type AnyRule = Pick<Rule, 'id' | 'sheet' | 'stops' | 'question'> & {
  judge(context: CheckContext, limit: never): ReturnType<Rule['judge']>;
};

/** What one rule finds; nothing where the region lacks it. */
export function runRule(rule: AnyRule, context: CheckContext): readonly Finding[] {
  const limit = limitIn(context, rule.id);
  if (limit === undefined) return [];
  return rule.judge(context, limit as never).map((judged) => finding(rule, limit, context, judged));
}

function limitIn({ pack }: CheckContext, id: RuleId): Limit<RuleLimits[RuleId]> | undefined {
  return pack.rules[id];
}
