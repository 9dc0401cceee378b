import type { RulePack } from '../../rules/pack.ts';
import type { RuleId } from '../../rules/ruleLimits.ts';
import type { Parts } from './draft.ts';

/** One change of the sound design and what the rule has to say of it. Figures worked by hand beside it. */
export interface Example {
  readonly set?: (parts: Parts) => void;
  readonly value?: number;
  readonly limit?: number;
  /** Words the first mend begins with. */
  readonly mend?: string;
  /** What the first mend changes: path with dots, and its value. */
  readonly change?: readonly [path: string, value: unknown];
  /** What the judged figure would be then. */
  readonly mended?: number;
  readonly needs?: string;
}

/** A rule's worked examples in one region. A rule that can ask has a case that asks. */
export interface Examples {
  readonly rule: RuleId;
  readonly variant?: RulePack['variant'];
  readonly fails: Example;
  readonly meets: Example;
  readonly asks?: Example;
}
