import type { DayTask } from '@eaveline/plan';
import { clock } from '../words/clock.ts';

/** `07:30 to 10:30`; a task broken off at the end of a day says on which day it ends. */
export function whenWords({ doneBefore, parts }: Pick<DayTask, 'doneBefore' | 'parts'>, startH: number): string {
  const first = parts[0];
  const last = parts.at(-1);
  if (doneBefore) return 'before';
  if (first === undefined || last === undefined) return 'not placed';
  const ends = `${last.day === first.day ? '' : `day ${last.day}, `}${clock(startH + last.endH)}`;
  return `${clock(startH + first.startH)} to ${ends}`;
}
