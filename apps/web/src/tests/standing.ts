import type { Finding, TestRow } from '@eaveline/plan';
import { percent, withUnit } from '../words/figure.ts';
import { isLook } from './reading.ts';

/** One way a reading stands: to the limit, to the drawing, or to what had to be seen. */
export interface Standing {
  readonly state: Extract<Finding['state'], 'meets' | 'fails'>;
  readonly words: string;
}

/**
 * How the reading of a test stands: lawful is one question, as designed another.
 *
 * `Meets the limit, 20 A.` and `Fails the drawing, 11 % low.`
 */
export function standings(row: TestRow): Standing[] {
  const { reading, limit, predicted } = row;
  if (reading === undefined) return [];
  if (isLook(row)) {
    return reading.value === 0
      ? [{ state: 'fails', words: 'Not as it has to be.' }]
      : [{ state: 'meets', words: 'Seen as it has to be.' }];
  }
  const lawful: Standing[] =
    reading.inLimit === undefined || limit === undefined
      ? []
      : reading.inLimit
        ? [{ state: 'meets', words: `Meets the limit, ${withUnit(limit.value, limit.unit)}.` }]
        : [{ state: 'fails', words: `Fails the limit, ${withUnit(limit.value, limit.unit)}.` }];
  if (reading.nearPrediction === undefined || predicted === undefined) return lawful;
  if (reading.nearPrediction) return [...lawful, { state: 'meets', words: 'Meets the drawing.' }];
  return [...lawful, { state: 'fails', words: `Fails the drawing, ${offWords(reading.value, predicted)}.` }];
}

/** `11 % low` of what was expected; in the unit itself where next to nothing was expected. */
function offWords(value: number, { value: expected, unit }: { readonly value: number; readonly unit: string }): string {
  const side = value < expected ? 'low' : 'high';
  const share = Math.abs(value - expected) / Math.abs(expected);
  if (!Number.isFinite(share) || share > 5) return `${withUnit(Math.abs(value - expected), unit)} ${side}`;
  return `${percent(share)} ${side}`;
}

/** Whether a test has a reading that fails in any way. */
export function failsReading(row: TestRow): boolean {
  return standings(row).some(({ state }) => state === 'fails');
}
