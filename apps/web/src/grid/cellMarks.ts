import type { Finding, Plan } from '@eaveline/plan';
import { counted, sentence } from '../words/count.ts';

/** How a cell stands, and what is said of it. */
export interface CellMark {
  readonly state: Finding['state'];
  readonly words: string;
}

/** Marks by job path with dots, `choices.trunks.a.feedDrop`. */
export type CellMarks = ReadonlyMap<string, CellMark>;

/**
 * Cells that something hangs on: those a mend would change, with the finding it mends; and facts that are not known,
 * with how many checks wait for them. Of two findings at one cell the one that fails is shown.
 */
export function cellMarks({ checks, site }: Pick<Plan, 'checks' | 'site'>): CellMarks {
  const marks = new Map<string, CellMark>();
  for (const { at, rules } of site.missing) {
    const waits =
      rules.length === 0
        ? ''
        : ` ${sentence(counted(rules.length, 'check'))} ${rules.length === 1 ? 'waits' : 'wait'}.`;
    marks.set(at, { state: 'ask', words: `Not known yet.${waits}` });
  }
  for (const { state, title, mends } of checks.findings) {
    if (state === 'meets') continue;
    for (const { path } of mends.flatMap(({ changes }) => changes ?? [])) {
      const at = path.join('.');
      if (state === 'fails' || !marks.has(at)) marks.set(at, { state, words: title });
    }
  }
  return marks;
}
