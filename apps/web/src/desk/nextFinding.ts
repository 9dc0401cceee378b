import type { Plan, SheetNo } from '@eaveline/plan';

/** Where a step leads: a sheet and what is selected on it. */
export interface Step {
  readonly sheet: SheetNo;
  readonly id: string;
}

/**
 * The next or previous finding that does not meet, or the next test on sheet 11; round and round.
 * From anything else the first (or the last) one.
 */
export function nextFinding(plan: Plan, no: SheetNo, at: string | undefined, by: 1 | -1): Step | undefined {
  const steps: Step[] =
    no === '11'
      ? plan.tests.rows.map(({ id }) => ({ sheet: '11', id }))
      : plan.checks.findings
          .filter(({ state }) => state !== 'meets')
          .map(({ id, sheet }) => ({ sheet: no === '08' ? '08' : sheet, id }));
  if (steps.length === 0) return undefined;
  const now = steps.findIndex(({ id }) => id === at);
  if (now < 0) return by === 1 ? steps[0] : steps.at(-1);
  return steps[(now + by + steps.length) % steps.length];
}
