import type { Job } from '@eaveline/job';
import type { Finding, Plan, StageAhead, StageName, Tally } from '@eaveline/plan';
import type { NextHold } from '../book/nextHold.ts';

/** What the page asks of the worker, one thing at a time; `seq` rises. */
export type Ask =
  | {
      readonly kind: 'work out';
      readonly seq: number;
      readonly job: Job;
      /** The page knows nothing of this job's plan and has to be handed every part of it. */
      readonly whole: boolean;
      /** Stages the page waits for; the others come after. */
      readonly first: readonly StageName[];
    }
  | { readonly kind: 'sum up'; readonly seq: number; readonly job: Job }
  | {
      readonly kind: 'read weather';
      readonly seq: number;
      readonly jobId: string;
      readonly name: string;
      readonly bytes: Uint8Array;
    }
  | { readonly kind: 'drop weather'; readonly seq: number; readonly jobId: string };

/** Said while a plan or a summary is under work: it is to be left before its next stage, something else is wanted. */
export interface SetAside {
  readonly kind: 'set aside';
  readonly seq: number;
}

/** The few figures of a plan the Book shows. */
export interface PlanSummary {
  readonly jobId: string;
  readonly tally: Tally;
  readonly first?: Pick<Finding, 'title' | 'state' | 'stops'>;
  readonly modules: number;
  readonly days: number;
  /** Where nobody goes on until somebody has looked. */
  readonly nextHold?: NextHold;
  /** Places of the units that have a serial on record, as the drawing names them, by unit id: `N1·4`. */
  readonly unitPlaces?: Readonly<Record<string, string>>;
}

/** A weather file as it was read, in words. */
export interface WeatherRead {
  readonly fileName: string;
  /** Undefined where the file could not be used. */
  readonly place?: string;
  /** What the reader noticed, a sentence each. */
  readonly remarks: readonly string[];
}

/** Stages of a plan by their names; in a message only those redone since the last one, for the page has the others. */
export type PlanParts = Partial<Pick<Plan, StageName>>;

/** What the worker answers: while it works on a plan any number of `stage`, then one of the others. */
export type Answer =
  | {
      readonly kind: 'stage';
      readonly seq: number;
      readonly ahead: StageAhead;
      /** Stages that stand, redone or not. */
      readonly fresh: readonly StageName[];
      readonly parts: PlanParts;
    }
  | {
      readonly kind: 'plan';
      readonly seq: number;
      readonly fresh: readonly StageName[];
      readonly parts: PlanParts;
      readonly tookMs: number;
    }
  | { readonly kind: 'summary'; readonly seq: number; readonly summary: PlanSummary }
  | { readonly kind: 'weather'; readonly seq: number; readonly read: WeatherRead | undefined }
  | { readonly kind: 'set aside'; readonly seq: number }
  | { readonly kind: 'fell over'; readonly seq: number; readonly words: string };
