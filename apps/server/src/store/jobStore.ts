/** What is known of a job without opening it. */
export interface JobEntry {
  readonly id: string;
  readonly name: string;
  /** The rule pack the job is judged by, as the document says it. */
  readonly region: string;
  /** When it was last saved: ISO 8601, UTC. */
  readonly updated: string;
  /** Counts the saves of this job, from 1; two people who saw the same revision saw the same document. */
  readonly revision: number;
}

/** A job with its document. The store never looks inside the document. */
export interface StoredJob extends JobEntry {
  readonly document: unknown;
}

/** What is saved: the document, what the list shows of it, and the clock of whoever saves. */
export interface JobToSave {
  readonly id: string;
  readonly name: string;
  readonly region: string;
  readonly document: unknown;
  readonly savedAt: Date;
}

/** One earlier or present state of a job. */
export interface SavedState {
  readonly revision: number;
  /** ISO 8601, UTC. */
  readonly savedAt: string;
  readonly document: unknown;
}

/**
 * Where jobs are kept. Every adapter passes the suite in `acceptJobStore.ts`.
 *
 * A save is answered only once it would survive the mains going off, as far as the adapter can promise that.
 */
export interface JobStore {
  /** All jobs, the one saved last first. */
  list(): Promise<readonly JobEntry[]>;
  get(id: string): Promise<StoredJob | undefined>;
  /**
   * Saves a whole document and keeps the state it replaces. A document equal to the stored one is not saved again.
   *
   * @param seen  the revision the saver had read. Where it is no longer the newest, nothing is written and
   *              `undefined` comes back; leave it out to save over whatever is there.
   */
  put(job: JobToSave, seen?: number): Promise<JobEntry | undefined>;
  /** Takes a job off the list; its history stays. False where there was none. */
  remove(id: string): Promise<boolean>;
  /** Every state a job was saved in, the oldest first. */
  history(id: string): Promise<readonly SavedState[]>;
  /** The state a job was saved in at a revision; undefined where there was none. */
  stateAt(id: string, revision: number): Promise<SavedState | undefined>;
  /** True until the first save ever. */
  isUntouched(): Promise<boolean>;
  close(): Promise<void>;
}
