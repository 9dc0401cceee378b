import type { Assumption } from '@eaveline/formats';

/** One thing noticed in a file, whatever its kind. */
export interface ReportRemark {
  readonly severity: 'stop' | 'drop' | 'warn' | 'note';
  /** Kind of remark, for programs; jobs have none. */
  readonly code?: string;
  readonly line?: number;
  /** Column, element or path of the field. */
  readonly field?: string;
  readonly found: string;
  readonly wanted: string;
  readonly done?: string;
  readonly mend?: string;
}

/** What a reader made of a file. */
export interface Held {
  readonly usable: boolean;
  /** What the file holds, as lines for a person. */
  readonly facts: readonly (readonly [label: string, value: string])[];
  /** The same as data. */
  readonly holds: Readonly<Record<string, unknown>>;
  readonly remarks: readonly ReportRemark[];
  /** How often each kind of remark occurred, also beyond those listed. */
  readonly counts: Readonly<Record<string, number>>;
  readonly assumptions: readonly Assumption[];
}
