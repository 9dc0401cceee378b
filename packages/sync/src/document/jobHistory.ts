import type { Reason } from './reason.ts';

/** One change in a job's history. */
export interface Moment {
  /** Names the change and, as a head, the state after it. */
  readonly hash: string;
  /** Changes it was made on. */
  readonly after: readonly string[];
  /** Seconds of UTC since 1970, by the clock of the device. */
  readonly atS: number;
  readonly reason: Reason;
}
