import type { Finding, SheetNo, Working } from '@eaveline/plan';
import type { LedgerLine } from '../parts/Ledger.tsx';

/** A sum: what, factor, running value; then what it comes to. */
export interface Sum {
  readonly lines: readonly LedgerLine[];
  readonly total: LedgerLine;
}

/** Something on a sheet that can be selected and shown on the pad. */
export interface Subject {
  /** Steady from one plan to the next: `rise:a`. Unique on its sheet. */
  readonly id: string;
  readonly name: string;
  /** How the figure came about. */
  readonly working?: Working;
  /** The same as a sum that is written line under line, where the figure is one. */
  readonly ledger?: Sum;
  /** The rule that judged it. */
  readonly finding?: Finding;
  /** What there is to say where no figure was worked out. */
  readonly words?: readonly string[];
}

/** A subject and where it is shown: sheet and page of the pad, `04.2`. */
export interface PlacedSubject extends Subject {
  readonly sheet: SheetNo;
  readonly page: string;
}

/** Gives the subjects of a sheet their pages, in their order; of two with one id the first stays. */
export function paged(sheet: SheetNo, subjects: readonly Subject[]): PlacedSubject[] {
  const seen = new Set<string>();
  const once = subjects.filter(({ id }) => !seen.has(id) && seen.add(id));
  return once.map((subject, i) => ({ ...subject, sheet, page: `${sheet}.${i + 1}` }));
}

/** Workings of a stage as subjects, `working:2`, named as they are. */
export function workingSubjects(prefix: string, workings: readonly Working[]): Subject[] {
  return workings.map((working, i) => ({ id: `${prefix}:${i + 1}`, name: working.name, working }));
}
