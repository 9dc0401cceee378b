import type { Job } from '@eaveline/job';
import type { Plan, StageName } from '@eaveline/plan';
import type { BegunPlan } from './begunPlan.ts';

/** The stage under work, and how many of the road's stages lie behind it: "energy, stage 7 of 13" has 6 done. */
export interface Progress {
  readonly stage: StageName;
  readonly done: number;
  readonly of: number;
}

/** What is known of a job's plan at this moment, whole or not. */
export interface PlanSoFar {
  /** The state of the job that the fresh stages are of. */
  readonly job: Job;
  /** All thirteen stages, each the newest there is; undefined while one has never been worked out. */
  readonly plan: Plan | undefined;
  /** The stages there are, while one has never been worked out. */
  readonly begun: BegunPlan | undefined;
  /** Stages that are of `job`; the others of `plan` are of an earlier state and are shown as stale. */
  readonly fresh: ReadonlySet<StageName>;
  /** Where the work stands; undefined when nothing is being worked out. */
  readonly progress: Progress | undefined;
}

/** A plan with every stage of the job it was asked for. */
export interface WorkedOut extends PlanSoFar {
  readonly plan: Plan;
  readonly begun: undefined;
  readonly progress: undefined;
  /** Time the work took in the worker, ms. */
  readonly tookMs: number;
}

export interface WorkOutOptions {
  /** Hears of each step of work that takes longer than a few frames; never of a quick one, and never after its end. */
  readonly onPart?: (soFar: PlanSoFar) => void;
}

/** Thrown where the worker could not answer; the message is what it said. */
export class NotWorkedOut extends Error {
  override readonly name = 'NotWorkedOut';
}

/** Thrown to whoever waits for a plan that a person stopped. What was worked out until then is in `soFar`. */
export class Stopped extends Error {
  override readonly name = 'Stopped';
  readonly soFar: PlanSoFar;

  constructor(soFar: PlanSoFar) {
    super(stoppedWords(soFar));
    this.soFar = soFar;
  }
}

function stoppedWords({ plan, progress }: PlanSoFar): string {
  if (progress === undefined) return 'Stopped before the first stage.';
  const { stage, done, of } = progress;
  const before = done === 0 ? 'No figure is of this state yet' : 'The figures before it stand';
  const rest = plan === undefined ? 'the rest is not worked out' : 'the rest is of an earlier state';
  return `Stopped at ${stage}, stage ${done + 1} of ${of}. ${before}; ${rest}.`;
}
