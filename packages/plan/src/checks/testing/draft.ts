import type { Plan } from '../../plan.ts';
import type { RulePack } from '../../rules/pack.ts';
import type { CheckedStages, CheckView } from '../context.ts';

/** A value that may still be written to, all the way down. */
export type Draft<T> = T extends Float64Array | ((...args: never[]) => unknown)
  ? T
  : T extends object
    ? { -readonly [K in keyof T]: Draft<T[K]> }
    : T;

/** A case before it is judged: the job's part and the earlier stages, open to changes. */
export interface Parts {
  readonly variant: RulePack['variant'];
  readonly view: Draft<CheckView>;
  readonly stages: Draft<Pick<Plan, CheckedStages>>;
}
