/** Why a text is not taken into a cell. */
export interface CellRefusal {
  /** `twelve is no number`. */
  readonly found: string;
  readonly wanted: string;
  /** The way out, a sentence. */
  readonly mend: string;
}
