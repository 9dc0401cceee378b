import { tally } from '../finding.ts';
import { packFor } from '../rules/index.ts';
import type { Stage } from '../stage.ts';
import { type CheckedStages, type CheckView, contextOf } from './context.ts';
import { idleConfirmations } from './idleConfirmations.ts';
import { leftOut, unconfirmedOf } from './leftOut.ts';
import { rules } from './rules/index.ts';
import { runRule } from './runRules.ts';
import { sortFindings } from './sortFindings.ts';
import type { ChecksPlan } from './types.ts';
import { viewOf } from './viewOf.ts';

/** Every rule of the region, asked of the design. */
export const checksStage: Stage<'checks', CheckedStages, CheckView> = {
  name: 'checks',
  before: ['site', 'roof', 'array', 'trunks', 'board', 'backup', 'structure'],
  view: viewOf,
  run: (view, before): ChecksPlan => {
    const pack = packFor(view.choices.rules);
    const context = contextOf(view, pack, before);
    const findings = sortFindings(rules.flatMap((rule) => runRule(rule, context)));
    const idle = idleConfirmations(context, findings);
    return {
      pack: pack.id,
      variant: pack.variant,
      editions: { ...pack.editions, ...view.choices.rules.editions },
      findings,
      tally: tally(findings),
      unconfirmed: unconfirmedOf(findings),
      idleConfirmations: idle,
      words: pack.words,
      leavesOut: [...leftOut(pack), ...idle],
    };
  },
};
