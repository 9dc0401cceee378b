/** How much a remark matters: nothing usable, this record left out, used but doubtful, worth knowing. */
export type Severity = 'stop' | 'drop' | 'warn' | 'note';

/**
 * What a reader noticed in a file, as data. `found`, `wanted`, `done` and `mend` are whole
 * sentences, so that a screen may show them one by one or run them together.
 */
export interface Remark {
  readonly severity: Severity;
  /** Kind of remark, for programs: `row-short`. */
  readonly code: string;
  /** Line of the file, counted from 1. */
  readonly line?: number;
  /** Column or element: `GHI`. */
  readonly field?: string;
  readonly found: string;
  readonly wanted: string;
  /** What the reader did about it. */
  readonly done: string;
  /** What a person can do about it, where there is something to do. */
  readonly mend?: string;
}

/** Something the reader took for granted and a person may change by reading again with `options`. */
export interface Assumption {
  /** Name of the option that changes it: `sunShiftH`. */
  readonly key: string;
  readonly value: string | number;
  /** Other values worth offering. */
  readonly choices?: readonly (string | number)[];
  /** One sentence for a person. */
  readonly says: string;
}

/** What every reader returns. `data` is undefined exactly when a remark says `stop`. */
export interface Reading<T> {
  /** What the file is: `epw`, `tmy3`, `nem12`. */
  readonly what: string;
  readonly data: T | undefined;
  /** In order of the file, at most {@link REMARKS_OF_A_KIND} of one code. */
  readonly remarks: readonly Remark[];
  /** How often each code occurred, also beyond those listed. */
  readonly counts: Readonly<Record<string, number>>;
  readonly assumptions: readonly Assumption[];
}

/** The remark as one run of text. */
export function remarkSentence(remark: Remark): string {
  return [remark.found, remark.wanted, remark.done, remark.mend].filter((part) => part).join(' ');
}
