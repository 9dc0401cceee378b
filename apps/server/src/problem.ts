/** One thing wrong with what was sent: for programs by path, for people in words, always with a way out. */
export interface Problem {
  /** Path in the document (`roof.planes[2].pitchDeg`), or the part of the request. */
  readonly at: string;
  readonly found: string;
  readonly wanted: string;
  readonly mend: string;
}

/** What a check of a whole job document comes to; all problems at once, never only the first. */
export type Validated =
  | {
      readonly ok: true;
      readonly id: string;
      readonly name: string;
      readonly region: string;
      readonly document: unknown;
    }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/** Every answer that is not a success has this one shape. */
export interface Refused {
  readonly problems: readonly Problem[];
}

export const refused = (...problems: readonly Problem[]): Refused => ({ problems });
