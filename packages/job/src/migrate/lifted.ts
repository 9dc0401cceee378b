import type { Raw } from '../parse/gather.ts';
import type { Remarked } from '../parse/remark.ts';

/** A document one or more versions newer, and what could not be carried over. */
export interface Lifted {
  readonly document: Raw;
  readonly remarks: readonly Remarked[];
}
