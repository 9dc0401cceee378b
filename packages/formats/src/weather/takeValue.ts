import type { RemarkLog } from '../reading/remarkLog.ts';
import { plainNumber } from '../text/fields.ts';

/** How one column of an hourly file is to be taken. */
export interface ValueRule {
  /** For remarks: `dry-bulb temperature`. */
  readonly name: string;
  /** This and above stand for missing. */
  readonly missingFrom?: number;
  /** This and below stand for missing. */
  readonly missingTo?: number;
  readonly low: number;
  readonly high: number;
  /** Values a little below are taken as this: instruments at night read slightly negative. */
  readonly floor?: number;
  /** Say nothing when the column is absent or odd: it is only a help. */
  readonly quiet?: boolean;
}

/** The value of one field, or undefined when it is blank, a code for missing, not a number, or not to be believed. */
export function takeValue(
  field: string | undefined,
  rule: ValueRule,
  line: number,
  log: RemarkLog,
): number | undefined {
  if (field === undefined || field === '') return undefined;
  const value = plainNumber(field);
  if (value === undefined) {
    if (!rule.quiet) {
      log.add({
        severity: 'drop',
        code: 'not-a-number',
        line,
        field: rule.name,
        found: `Line ${line} has “${field.slice(0, 40)}” for ${rule.name}.`,
        wanted: 'A number should stand there.',
        done: 'The value was left out.',
      });
    }
    return undefined;
  }
  const { missingFrom = Number.POSITIVE_INFINITY, missingTo = Number.NEGATIVE_INFINITY, floor } = rule;
  if (value >= missingFrom || value <= missingTo) return undefined;
  if (value < rule.low || value > rule.high) {
    if (!rule.quiet) {
      log.add({
        severity: 'drop',
        code: 'value-outside',
        line,
        field: rule.name,
        found: `Line ${line} has ${field} for ${rule.name}.`,
        wanted: `Between ${rule.low} and ${rule.high} is possible.`,
        done: 'The value was left out.',
      });
    }
    return undefined;
  }
  // adding 0 turns −0 into 0
  return (floor === undefined ? value : Math.max(floor, value)) + 0;
}
