import type { Veil } from './beamRaster.ts';
import type { Point } from './convexBody.ts';

/** Vertical half-planes the sky is cut into: against forty times as many they err by 2 in 10,000. */
const SLICES = 180;

/** ∫ (n_h cos e + n_u sin e) cos e de from the level to tan e = t, in closed form. */
function sliceBelow(level: number, up: number, t: number): number {
  if (t === Number.POSITIVE_INFINITY) return level * (Math.PI / 4) + up / 2;
  const root = 1 + t * t;
  return (level / 2) * (Math.atan(t) + t / root) + (up / 2) * ((t * t) / root);
}

/** What hides part of one slice: from one tangent of height to another, letting some light through. */
interface Hidden {
  readonly from: number;
  readonly to: number;
  readonly transmission: number;
}

/** The stretch of one slice, in tangents of height, that lies in a patch. */
function inSlice({ patch, transmission }: Veil, sin: number, cos: number, lowest: number): Hidden | undefined {
  let from = lowest;
  let to = Number.POSITIVE_INFINITY;
  for (let k = 0; k < patch.length; k += 3) {
    const level = (patch[k] as number) * sin + (patch[k + 1] as number) * cos;
    const up = patch[k + 2] as number;
    if (up > 0) from = Math.max(from, -level / up);
    else if (up < 0) to = Math.min(to, -level / up);
    else if (level < 0) return undefined;
    if (from >= to) return undefined;
  }
  return { from, to, transmission };
}

/**
 * Heights between which a body stands before the sky in one direction, degrees; undefined where it does not.
 *
 * @param azimuthDeg  Clockwise from north.
 */
export function hiddenHeights(patch: Veil['patch'], azimuthDeg: number): readonly [number, number] | undefined {
  const azimuth = (azimuthDeg * Math.PI) / 180;
  const hidden = inSlice({ patch, transmission: 0 }, Math.sin(azimuth), Math.cos(azimuth), 0);
  const deg = (tangent: number) => (Math.atan(tangent) * 180) / Math.PI;
  return hidden === undefined ? undefined : [deg(hidden.from), deg(hidden.to)];
}

/** Light of one slice above `lowest`, past all that hides part of it. */
function seenInSlice(level: number, up: number, lowest: number, hidden: readonly Hidden[]): number {
  const ends = [lowest, Number.POSITIVE_INFINITY, ...hidden.flatMap(({ from, to }) => [from, to])].sort(
    (a, b) => a - b,
  );
  let seen = 0;
  for (let k = 0; k + 1 < ends.length; k++) {
    const [from, to] = [ends[k] as number, ends[k + 1] as number];
    if (to <= from) continue;
    let passes = 1;
    for (const veil of hidden) if (veil.from <= from && veil.to >= to) passes *= veil.transmission;
    if (passes > 0) seen += passes * (sliceBelow(level, up, to) - sliceBelow(level, up, from));
  }
  return seen;
}

/**
 * Share of an evenly bright sky's light in a plane that reaches a point past bodies and horizon.
 *
 *     ∫ open · (n·d) dω ÷ ∫ (n·d) dω, over the sky above the level and before the plane
 *
 * Cut into vertical slices; in each the bodies are stretches of height and the integral is exact.
 *
 * @param normal     Of the plane, a unit vector.
 * @param horizonDeg Height of the horizon for every whole degree of azimuth, 0 to 360; level where left out.
 */
export function skyShare(normal: Point, veils: readonly Veil[], horizonDeg?: ArrayLike<number>): number {
  let all = 0;
  let seen = 0;
  for (let k = 0; k < SLICES; k++) {
    const azimuth = ((k + 0.5) * 2 * Math.PI) / SLICES;
    const [sin, cos] = [Math.sin(azimuth), Math.cos(azimuth)];
    const level = normal[0] * sin + normal[1] * cos;
    const up = normal[2];
    // below this height the plane is seen from behind
    const lowest = level >= 0 ? 0 : up > 0 ? -level / up : Number.POSITIVE_INFINITY;
    if (lowest === Number.POSITIVE_INFINITY) continue;
    all += sliceBelow(level, up, Number.POSITIVE_INFINITY) - sliceBelow(level, up, lowest);
    const hidden = veils.flatMap((veil) => inSlice(veil, sin, cos, lowest) ?? []);
    const rim = horizonDeg === undefined ? 0 : (horizonDeg[Math.round((azimuth * 180) / Math.PI) % 360] as number);
    if (rim > 0) hidden.push({ from: lowest, to: Math.max(lowest, Math.tan((rim * Math.PI) / 180)), transmission: 0 });
    seen += seenInSlice(level, up, lowest, hidden);
  }
  return all > 0 ? seen / all : 1;
}
