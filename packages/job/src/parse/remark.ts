/** What a reader noticed in a job file. A remark judges the file; a finding judges the design. */
export interface JobRemark {
  /** `stop`: the job cannot be opened. `warn`: it opens, and somebody should look. `note`: worth knowing. */
  readonly severity: 'stop' | 'warn' | 'note';
  readonly file?: string;
  /** Path of the field, `choices.trunks.a.homeRun.lengthM`; empty for the file as a whole. */
  readonly at: string;
  /** Line and column in the text, counted from one, where they are known. */
  readonly line?: number;
  readonly column?: number;
  readonly found: string;
  readonly wanted: string;
  /** The way out. */
  readonly mend: string;
}

/** Facts of a remark before its place in the text is known. */
export type Remarked = Omit<JobRemark, 'file' | 'line' | 'column'>;

/** Builds a remark that stops. */
export function stop(at: string, found: string, wanted: string, mend: string): Remarked {
  return { severity: 'stop', at, found, wanted, mend };
}

/** A remark as one line of text: where, what was found, what was wanted, the way out. */
export function remarkLine({ file, at, line, column, found, wanted, mend }: JobRemark): string {
  const position = line === undefined ? undefined : `line ${line}${column === undefined ? '' : `, column ${column}`}`;
  const where = [file, position, at || undefined].filter((part) => part !== undefined).join(', ');
  return `${where || 'the file'}: found ${found}; wanted ${wanted}. ${mend}`;
}

/** A value as it may be shown in a remark: short, on one line. */
export function shown(value: unknown): string {
  if (value === undefined) return 'nothing';
  if (Array.isArray(value)) return value.length === 0 ? 'an empty list' : `a list of ${value.length}`;
  if (typeof value === 'object' && value !== null) return 'a group of fields';
  if (typeof value === 'number') return String(value).replace('-', '−');
  if (typeof value !== 'string') return String(value);
  if (value === '') return 'an empty text';
  return JSON.stringify(value.length > 40 ? `${value.slice(0, 40)}…` : value);
}

/** Some names out of many, for a way out. */
export function someOf(names: readonly string[]): string {
  if (names.length === 0) return 'there is none yet';
  const few = names.slice(0, 5).join(', ');
  return names.length > 5 ? `${few} and ${names.length - 5} more` : few;
}
