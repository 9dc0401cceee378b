import type { SunPlan } from '../sun/types.ts';

/** Places of the sun inside each step that shade is looked up at. */
export const SUNS_A_STEP = 6;

/** Directions to the sun at even instants inside every step, `SUNS_A_STEP` of them a step, east, north, up. */
export interface SunPath {
  readonly east: Float64Array;
  readonly north: Float64Array;
  readonly up: Float64Array;
}

/**
 * The sun's way through each step, from its places at mid-step.
 *
 * Between two neighbouring steps the direction runs along the chord and is brought back to length one: within 0.1° for
 * hours. Where the next row is not the next hour, as between the months of a typical year, the sun stands still.
 */
export function sunPath({ steps, stepS, sunTimeMs, east, north, up }: SunPlan): SunPath {
  const path = {
    east: new Float64Array(steps * SUNS_A_STEP),
    north: new Float64Array(steps * SUNS_A_STEP),
    up: new Float64Array(steps * SUNS_A_STEP),
  };
  const follows = (i: number) =>
    i > 0 && i < steps && (sunTimeMs[i] as number) - (sunTimeMs[i - 1] as number) === stepS * 1000;
  for (let i = 0; i < steps; i++) {
    const before = follows(i) ? i - 1 : i;
    const after = follows(i + 1) ? i + 1 : i;
    for (let k = 0; k < SUNS_A_STEP; k++) {
      const offset = (k + 0.5) / SUNS_A_STEP - 0.5;
      const other = offset < 0 ? before : after;
      const share = Math.abs(offset);
      const e = (1 - share) * (east[i] as number) + share * (east[other] as number);
      const n = (1 - share) * (north[i] as number) + share * (north[other] as number);
      const u = (1 - share) * (up[i] as number) + share * (up[other] as number);
      const length = Math.sqrt(e * e + n * n + u * u);
      const at = i * SUNS_A_STEP + k;
      path.east[at] = e / length;
      path.north[at] = n / length;
      path.up[at] = u / length;
    }
  }
  return path;
}
