import type { About, Finding, Mend, Seen, SheetNo } from '../finding.ts';
import type { Limit } from '../rules/pack.ts';
import type { RuleId, RuleLimits } from '../rules/ruleLimits.ts';
import type { Working } from '../working.ts';
import type { CheckContext } from './context.ts';

interface Spoken {
  readonly about: About;
  readonly title: string;
  readonly detail?: string;
  readonly mends?: readonly Mend[];
  readonly needs?: readonly string[];
  /** How the value came about; how the limit did, where it was worked out. */
  readonly working?: Working;
  readonly limitWorking?: Working;
  /** Where this limit is known from somewhere else than the pack's own. */
  readonly seen?: Seen;
  /** Where this limit stands, when it is another text than the pack names for the rule. */
  readonly from?: Pick<Limit<unknown>, 'clause' | 'document' | 'seen'>;
}

interface Measured {
  readonly value: number;
  readonly limit: number;
  readonly unit: string;
  readonly sense: 'at most' | 'at least';
}

/** What a rule says of one thing: a figure against its limit, or a state in words. A state given wins. */
export type Judged = Spoken &
  ((Measured & { readonly state?: Finding['state'] }) | { readonly state: Finding['state'] });

/** One rule: one question put to a design. */
export interface Rule<K extends RuleId = RuleId> {
  readonly id: K;
  /** Sheet whose things it judges. */
  readonly sheet: SheetNo;
  /** True where a job may not go on to site while it fails or is open. A limit from practice never stops a job. */
  readonly stops: boolean;
  readonly question: string;
  judge(context: CheckContext, limit: Limit<RuleLimits[K]>): readonly Judged[];
}

/** A rule with the type of its limit taken from its id. */
export function rule<K extends RuleId>(made: Rule<K>): Rule<K> {
  return made;
}

/** A share above its limit by less than this is rounding of the machine, not of the design. */
const ROUNDING = 1e-9;

/** Is a figure inside its limit? Judged unrounded; only the last bits of the machine are forgiven. */
export function isWithin(value: number, limit: number, sense: 'at most' | 'at least'): boolean {
  const slack = ROUNDING * Math.abs(limit);
  return sense === 'at most' ? value <= limit + slack : value >= limit - slack;
}

/** State of what was judged. */
export function stateOf(judged: Judged): Finding['state'] {
  if (judged.state !== undefined) return judged.state;
  if (!('value' in judged)) throw new Error('a rule gave neither a state nor a figure');
  return isWithin(judged.value, judged.limit, judged.sense) ? 'meets' : 'fails';
}
