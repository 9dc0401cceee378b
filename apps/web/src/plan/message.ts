import type { Job } from '@eaveline/job';
import type { Finding, Plan, StageName, Tally } from '@eaveline/plan';
import type { NextHold } from '../book/nextHold.ts';

/** What the page asks of the worker. `seq` rises; an answer to an older question is thrown away. */
export type Ask =
  | { readonly kind: 'work out'; readonly seq: number; readonly job: Job }
  | { readonly kind: 'sum up'; readonly seq: number; readonly job: Job }
  | {
      readonly kind: 'read weather';
      readonly seq: number;
      readonly jobId: string;
      readonly name: string;
      readonly bytes: Uint8Array;
    }
  | { readonly kind: 'drop weather'; readonly seq: number; readonly jobId: string };

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

/** What the worker answers. */
export type Answer =
  | {
      readonly kind: 'plan';
      readonly seq: number;
      readonly head: Pick<Plan, 'jobId' | 'jobName' | 'invented'>;
      /** Only the stages that were redone; the page still has the others. */
      readonly parts: Partial<Pick<Plan, StageName>>;
      readonly tookMs: number;
    }
  | { readonly kind: 'summary'; readonly seq: number; readonly summary: PlanSummary }
  | { readonly kind: 'weather'; readonly seq: number; readonly read: WeatherRead | undefined }
  | { readonly kind: 'fell over'; readonly seq: number; readonly words: string };
