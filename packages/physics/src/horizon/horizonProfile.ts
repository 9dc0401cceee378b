import { finite, Refusal, within } from '../refusal.ts';

/** Skyline as pairs of azimuth (clockwise from true north, ascending) and elevation, degrees. */
export type HorizonPairs = readonly (readonly [azimuthDeg: number, elevationDeg: number])[];

/** A checked skyline. */
export interface HorizonProfile {
  readonly azimuthDeg: Float64Array;
  readonly elevationDeg: Float64Array;
}

/**
 * Checks a skyline: straight lines between pairs, and through north between the last and the first.
 * A closing pair at 360 that repeats the one at 0 is left out.
 *
 * @throws {Refusal} `missing` without a pair, `outside-range`, `inconsistent` where azimuths do not ascend.
 */
export function horizonProfile(pairs: HorizonPairs): HorizonProfile {
  const [first, closing] = [pairs[0], pairs[pairs.length - 1]];
  if (first?.[0] === 0 && closing?.[0] === 360 && first[1] === closing[1]) return horizonProfile(pairs.slice(0, -1));
  if (pairs.length === 0) {
    const mend = 'For an open horizon give one pair: azimuth 0, elevation 0.';
    throw new Refusal({ code: 'missing', at: 'horizon', got: 'no pair', want: 'at least one pair', mend });
  }
  const azimuthDeg = new Float64Array(pairs.length);
  const elevationDeg = new Float64Array(pairs.length);
  pairs.forEach(([azimuth, elevation], k) => {
    within(azimuth, 0, 360, `horizon[${k}][0]`, 'Clockwise from true north.');
    within(elevation, -30, 90, `horizon[${k}][1]`, 'Degrees above the level.');
    const before = k === 0 ? Number.NEGATIVE_INFINITY : azimuthDeg[k - 1];
    // 360 is north again: it may not stand beside a pair at 0
    if (!(azimuth > before) || azimuth - azimuthDeg[0] >= 360) {
      const mend = 'Sort by azimuth and keep one elevation each; 360 is 0.';
      throw new Refusal({ code: 'inconsistent', at: `horizon[${k}][0]`, got: azimuth, want: `above ${before}`, mend });
    }
    azimuthDeg[k] = azimuth;
    elevationDeg[k] = elevation;
  });
  return { azimuthDeg, elevationDeg };
}

/** Elevation of the skyline at any azimuth, degrees. @throws {Refusal} `not-finite`. */
export function horizonElevationDeg(profile: HorizonProfile, azimuth: number): number {
  finite(azimuth, 'azimuthDeg', 'Clockwise from true north.');
  const { azimuthDeg, elevationDeg } = profile;
  const last = azimuthDeg.length - 1;
  if (last === 0) return elevationDeg[0];
  const folded = ((azimuth % 360) + 360) % 360;
  // first pair at or beyond the direction; none means the stretch through north
  let after = 0;
  while (after <= last && azimuthDeg[after] < folded) after++;
  const wraps = after === 0 || after > last;
  const a0 = wraps ? azimuthDeg[last] : azimuthDeg[after - 1];
  const a1 = wraps ? azimuthDeg[0] + 360 : azimuthDeg[after];
  const e0 = wraps ? elevationDeg[last] : elevationDeg[after - 1];
  const e1 = wraps ? elevationDeg[0] : elevationDeg[after];
  const along = (wraps && folded < a0 ? folded + 360 : folded) - a0;
  return e0 + ((e1 - e0) * along) / (a1 - a0);
}
