import { rulePacks } from '../../rules/index.ts';
import type { RulePack } from '../../rules/pack.ts';
import { type CheckContext, contextOf } from '../context.ts';
import { baseStages } from './baseStages.ts';
import { baseView } from './baseView.ts';
import type { Parts } from './draft.ts';

/** The sound design of a region, after a change: what a rule is put to in its tests. */
export function caseOf(variant: RulePack['variant'], change: (parts: Parts) => void = () => {}): CheckContext {
  const parts: Parts = { variant, view: baseView(variant), stages: baseStages(variant) };
  change(parts);
  return contextOf(parts.view, rulePacks[variant], parts.stages);
}
