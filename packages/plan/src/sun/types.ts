import type { Climate } from '../site/types.ts';
import type { Working } from '../working.ts';

/** What the sky and the weather of the place come to. */
export interface SunFigures {
  /** The climate the year was made from: here again, so that later stages need not follow the survey's other facts. */
  readonly climate: Climate;
  /** Where the sun is taken: the site, or the place of the weather file. */
  readonly latitudeDeg: number;
  readonly stepS: number;
  readonly steps: number;
  readonly monthlyGhiKwhM2: readonly number[];
  readonly annualGhiKwhM2: number;
  /** Sunrise, noon and sunset by month (the 15th), local clock hours; undefined where the sun does not rise or set. */
  readonly daylight: readonly { readonly riseH?: number; readonly noonH: number; readonly setH?: number }[];
  readonly workings: readonly Working[];
  readonly leavesOut: readonly string[];
}

/** Sky and weather of the place, one value a step. Hours of a typical or generated year. */
export interface SunPlan extends SunFigures {
  /** Instant the sun is taken at, UTC, ms. */
  readonly sunTimeMs: Float64Array;
  /** Month 0 to 11 the step is booked to, and hour 0 to 23 of the place's standard time. */
  readonly month: Uint8Array;
  readonly hour: Uint8Array;
  readonly zenithDeg: Float64Array;
  readonly azimuthDeg: Float64Array;
  /** Unit vector to the sun: east, north, up. */
  readonly east: Float64Array;
  readonly north: Float64Array;
  readonly up: Float64Array;
  readonly ghi: Float64Array;
  readonly dni: Float64Array;
  readonly dhi: Float64Array;
  readonly dniExtra: Float64Array;
  readonly airC: Float64Array;
  readonly windMS: Float64Array;
}
