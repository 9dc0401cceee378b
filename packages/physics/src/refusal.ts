/** Facts of a refusal: plain data, so it crosses from worker to screen as it is. */
export interface RefusalFacts {
  /** For programs. */
  readonly code:
    | 'not-finite'
    | 'not-positive'
    | 'outside-range'
    | 'length-mismatch'
    | 'unknown-name'
    | 'missing'
    | 'inconsistent'
    | 'no-solution';
  /** Which input: `spans[3].lengthM`. */
  readonly at: string;
  readonly got: unknown;
  /** `greater than 0 m`. */
  readonly want: string;
  /** What the reader can do about it. */
  readonly mend: string;
}

/** Thrown when an input has no physical meaning. A design that breaks a rule is a Finding instead. */
export class Refusal extends Error {
  override readonly name = 'Refusal';
  readonly facts: RefusalFacts;

  constructor(facts: RefusalFacts) {
    super(`${facts.at} is ${String(facts.got)}; it has to be ${facts.want}. ${facts.mend}`);
    this.facts = facts;
  }
}

/** Refuses anything but a finite number; returns it, so that it can stand inside an expression. */
export function finite(value: number, at: string, mend = 'Give a number.'): number {
  if (!Number.isFinite(value)) {
    throw new Refusal({ code: 'not-finite', at, got: value, want: 'a finite number', mend });
  }
  return value;
}

/** Refuses anything but a finite number above zero; returns it. */
export function positive(value: number, at: string, mend: string): number {
  if (!(value > 0) || !Number.isFinite(value)) {
    throw new Refusal({ code: 'not-positive', at, got: value, want: 'greater than 0', mend });
  }
  return value;
}

/** Refuses a number outside [low, high]; returns it. */
export function within(value: number, low: number, high: number, at: string, mend: string): number {
  if (!(value >= low && value <= high)) {
    throw new Refusal({ code: 'outside-range', at, got: value, want: `${low} to ${high}`, mend });
  }
  return value;
}
