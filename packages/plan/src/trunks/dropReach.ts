/**
 * How far each unit's lead has to reach along the rail, in mm, with the trunk laid as well as it can be.
 *
 * A cable can be looped but not stretched: between neighbouring drops there are `spanMm` of it, between their units
 * `apartMm`. Where the cable is longer the rest hangs in a clip; where it is shorter the leads have to make up the
 * difference, and the difference adds up from unit to unit:
 *
 *     o[k+1] − o[k] ≥ apart[k] − span[k],   |o| as small as can be
 *
 * The smallest largest reach is half of the greatest sum of neighbouring shortfalls.
 *
 * Source: worked out here from the geometry; no published rule.
 */
export function dropReach(apartMm: readonly number[], spanMm: readonly number[]): readonly number[] {
  const short = apartMm.map((apart, k) => apart - (spanMm[k] ?? 0));
  let running = 0;
  let worst = 0;
  for (const s of short) {
    running = Math.max(0, running + s);
    worst = Math.max(worst, running);
  }
  const half = worst / 2;
  const offset = [-half];
  for (const s of short) offset.push(Math.max(-half, (offset.at(-1) ?? 0) + s));
  return offset.map(Math.abs);
}
