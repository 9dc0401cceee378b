import { type Working, worked } from '../working.ts';

/** What the model itself may be off in a year, one standard deviation as a share: common practice, no source. */
const MODEL_SD = 0.04;
/** Nine in ten of a normal spread lie within this many standard deviations of its middle. */
const NINE_IN_TEN = 1.645;

/** Low and high of nine years in ten, as shares of the figure: 1 ∓ 1.645 · √(climate² + model²). */
export function nineInTen(climateSd: number): readonly [number, number] {
  const half = NINE_IN_TEN * Math.hypot(climateSd, MODEL_SD);
  return [Math.max(0, 1 - half), 1 + half];
}

/** How the range comes about. */
export function rangeWorking(climateSd: number, quality: string): Working {
  const formula = '1.645 · √(climate² + model²)';
  return worked(
    'Half of the range, nine years in ten',
    NINE_IN_TEN * Math.hypot(climateSd, MODEL_SD),
    '',
    formula,
    'normal spread',
    [
      worked('climate, one standard deviation', climateSd, '', 'figures and year to year', 'site', [], {
        note: quality,
      }),
      worked('model, one standard deviation', MODEL_SD, '', 'taken', 'common practice, no source', []),
    ],
  );
}
