import type { SkyPatch } from './skyPatch.ts';

/** A body's patch of the sky and the share of light that passes through it. */
export interface Veil {
  readonly patch: SkyPatch;
  /** 0 for what is solid. */
  readonly transmission: number;
}

/** Declinations of the sun, every whole degree from −24 to 24. */
const LEVELS = 49;
const LOWEST_DEG = -24;
/** Hour angles of a day, five minutes each, from midnight to midnight by the sun. */
const BINS = 288;
const TURN = 2 * Math.PI;
const PER_BIN = TURN / BINS;

/**
 * Share of the sun's beam that reaches a place: for each declination the sum of it over the hour angles so far, so
 * that the mean over any stretch of the day is two readings.
 */
export interface BeamRaster {
  /** LEVELS × (BINS + 1). */
  readonly sums: Float32Array;
  /** Bins of each level and the one above between which something is hidden: outside them nothing need be read. */
  readonly first: Float32Array;
  readonly last: Float32Array;
  /** Mean share hidden, over all levels and hours with the sun above the level. */
  readonly hidden: number;
}

/** Stretches of hour angle, rad from −π to π, in pairs. */
type Arcs = number[];

/** Arcs on which A cos H + B sin H + C ≥ 0. */
function arcsOfEdge(a: number, b: number, c: number): Arcs | undefined {
  const r = Math.sqrt(a * a + b * b);
  if (c >= r) return undefined; // all of the day
  if (c <= -r) return [];
  const middle = Math.atan2(b, a);
  const half = Math.acos(-c / r);
  const from = middle - half;
  const to = middle + half;
  if (from < -Math.PI) return [-Math.PI, to, from + TURN, Math.PI];
  if (to > Math.PI) return [-Math.PI, to - TURN, from, Math.PI];
  return [from, to];
}

function both(one: Arcs, other: Arcs): Arcs {
  const out: Arcs = [];
  for (let i = 0; i < one.length; i += 2) {
    for (let j = 0; j < other.length; j += 2) {
      const from = Math.max(one[i] as number, other[j] as number);
      const to = Math.min(one[i + 1] as number, other[j + 1] as number);
      if (to > from) out.push(from, to);
    }
  }
  return out;
}

/** Hour angles, at one declination, at which the sun stands in a patch. */
function arcsInPatch(patch: SkyPatch, sinD: number, cosD: number, sinL: number, cosL: number): Arcs {
  let arcs: Arcs = [-Math.PI, Math.PI];
  for (let k = 0; k < patch.length; k += 3) {
    const [e, n, u] = [patch[k] as number, patch[k + 1] as number, patch[k + 2] as number];
    const edge = arcsOfEdge(cosD * (u * cosL - n * sinL), -e * cosD, sinD * (n * cosL + u * sinL));
    if (edge === undefined) continue;
    arcs = both(arcs, edge);
    if (arcs.length === 0) return arcs;
  }
  return arcs;
}

/** Puts on each five minutes the share of them that the arcs hold. */
function cover(arcs: Arcs, into: Float64Array): void {
  for (let k = 0; k < arcs.length; k += 2) {
    const from = ((arcs[k] as number) + Math.PI) / PER_BIN;
    const to = ((arcs[k + 1] as number) + Math.PI) / PER_BIN;
    const first = Math.floor(from);
    const last = Math.min(BINS - 1, Math.floor(to));
    for (let bin = first; bin <= last; bin++) {
      into[bin] = (into[bin] as number) + Math.min(to, bin + 1) - Math.max(from, bin);
    }
  }
}

/** Arcs of several solid bodies as one list without overlaps. */
function united(arcs: Arcs): Arcs {
  const pairs = Array.from({ length: arcs.length / 2 }, (_, k) => [arcs[2 * k] as number, arcs[2 * k + 1] as number]);
  pairs.sort(([a = 0], [b = 0]) => a - b);
  const out: Arcs = [];
  for (const [from = 0, to = 0] of pairs) {
    const end = out.length - 1;
    if (end > 0 && from <= (out[end] as number)) out[end] = Math.max(out[end] as number, to);
    else out.push(from, to);
  }
  return out;
}

/**
 * What of the beam reaches a place, for every declination and five minutes of the sun's day.
 *
 * The edges of shadows are exact: each of a patch's normals bounds the day to an arc of hour angle, the arcs are
 * intersected, solid bodies united, and each five minutes get the share of their time that is hidden. Behind porous
 * bodies the shares multiply.
 *
 * @param points  What each sample point of the place sees; the place gets their mean.
 * @returns       undefined where nothing ever stands before the sun.
 */
export function beamRaster(points: readonly (readonly Veil[])[], latitudeDeg: number): BeamRaster | undefined {
  if (points.every((veils) => veils.length === 0)) return undefined;
  const latitude = (latitudeDeg * Math.PI) / 180;
  const [sinL, cosL] = [Math.sin(latitude), Math.cos(latitude)];
  const sums = new Float32Array(LEVELS * (BINS + 1));
  const mean = new Float64Array(BINS);
  const open = new Float64Array(BINS);
  const hidden = new Float64Array(BINS);
  const first = new Float32Array(LEVELS).fill(BINS);
  const last = new Float32Array(LEVELS);
  let [lost, day] = [0, 0];
  for (let level = 0; level < LEVELS; level++) {
    const declination = ((LOWEST_DEG + level) * Math.PI) / 180;
    const [sinD, cosD] = [Math.sin(declination), Math.cos(declination)];
    mean.fill(0);
    for (const veils of points) {
      open.fill(1);
      const solid: Arcs = [];
      for (const { patch, transmission } of veils) {
        const arcs = arcsInPatch(patch, sinD, cosD, sinL, cosL);
        if (arcs.length === 0) continue;
        if (transmission === 0) {
          solid.push(...arcs);
          continue;
        }
        hidden.fill(0);
        cover(arcs, hidden);
        for (let bin = 0; bin < BINS; bin++)
          open[bin] = (open[bin] as number) * (1 - (1 - transmission) * (hidden[bin] as number));
      }
      if (solid.length > 0) {
        hidden.fill(0);
        cover(united(solid), hidden);
        for (let bin = 0; bin < BINS; bin++)
          open[bin] = (open[bin] as number) * Math.max(0, 1 - (hidden[bin] as number));
      }
      for (let bin = 0; bin < BINS; bin++) mean[bin] = (mean[bin] as number) + (open[bin] as number) / points.length;
    }
    const up = BINS * (sunUp(sinL, cosL, sinD, cosD) / Math.PI);
    day += up;
    let sum = 0;
    for (let bin = 0; bin < BINS; bin++) {
      const share = mean[bin] as number;
      sum += share;
      sums[level * (BINS + 1) + bin + 1] = sum;
      // a bin counts where its middle is by day: what is hidden by night is nothing
      if (share >= 1 - 1e-9 || Math.abs(bin + 0.5 - BINS / 2) > up / 2 + 1) continue;
      lost += 1 - share;
      for (const near of [level, level - 1]) {
        if (near < 0) continue;
        first[near] = Math.min(first[near] as number, bin);
        last[near] = Math.max(last[near] as number, bin + 1);
      }
    }
  }
  return lost > 0 ? { sums, first, last, hidden: lost / day } : undefined;
}

/** Half the day's length as an hour angle: cos H0 = −tan φ tan δ. */
function sunUp(sinL: number, cosL: number, sinD: number, cosD: number): number {
  const rise = (-sinL * sinD) / (cosL * cosD);
  return rise <= -1 ? Math.PI : rise >= 1 ? 0 : Math.acos(rise);
}

/** Where the sun stands through each step, as rasters are read: worked out once for all places of a site. */
export interface SunCells {
  /** Level below, and the share of the one above. */
  readonly level: Uint8Array;
  readonly levelShare: Float64Array;
  /** Bins from midnight at the step's beginning and end, while the sun is up; equal where it is down. */
  readonly from: Float64Array;
  readonly to: Float64Array;
}

/**
 * Rows of a raster for the steps of a year, from the sun's direction in the middle of each.
 *
 * A step in which the sun rises or sets counts from or to there only.
 */
export function sunCells(
  {
    east,
    north,
    up,
  }: { readonly east: ArrayLike<number>; readonly north: ArrayLike<number>; readonly up: ArrayLike<number> },
  steps: number,
  stepS: number,
  latitudeDeg: number,
): SunCells {
  const latitude = (latitudeDeg * Math.PI) / 180;
  const [sinL, cosL] = [Math.sin(latitude), Math.cos(latitude)];
  const half = (Math.PI * stepS) / 86_400;
  const cells = {
    level: new Uint8Array(steps),
    levelShare: new Float64Array(steps),
    from: new Float64Array(steps),
    to: new Float64Array(steps),
  };
  for (let i = 0; i < steps; i++) {
    const [e, n, u] = [east[i] as number, north[i] as number, up[i] as number];
    const sinD = n * cosL + u * sinL;
    const hour = Math.atan2(-e, u * cosL - n * sinL);
    const x = Math.min(
      LEVELS - 1,
      Math.max(0, (Math.asin(Math.max(-1, Math.min(1, sinD))) * 180) / Math.PI - LOWEST_DEG),
    );
    const level = Math.min(LEVELS - 2, Math.floor(x));
    cells.level[i] = level;
    cells.levelShare[i] = x - level;
    const up0 = sunUp(sinL, cosL, sinD, Math.sqrt(Math.max(1e-12, 1 - sinD * sinD)));
    const from = Math.max(hour - half, -up0);
    const to = Math.min(hour + half, up0);
    cells.from[i] = (from + Math.PI) / PER_BIN;
    cells.to[i] = to > from ? (to + Math.PI) / PER_BIN : (cells.from[i] as number);
  }
  return cells;
}

/** Sum of a level's shares from midnight to a bin and its part. */
function upTo(sums: Float32Array, row: number, bins: number): number {
  const turns = Math.floor(bins / BINS);
  const within = bins - turns * BINS;
  const bin = Math.min(BINS - 1, Math.floor(within));
  const before = sums[row + bin] as number;
  const part = before + (within - bin) * ((sums[row + bin + 1] as number) - before);
  return turns * (sums[row + BINS] as number) + part;
}

/** Mean share of the beam through one step; 1 where the sun is down. */
export function beamOpen(
  { sums, first, last }: BeamRaster,
  { level, levelShare, from, to }: SunCells,
  step: number,
): number {
  const a = from[step] as number;
  const b = to[step] as number;
  const at = level[step] as number;
  if (!(b > a) || b <= (first[at] as number) || a >= (last[at] as number)) return 1;
  const row = at * (BINS + 1);
  const share = levelShare[step] as number;
  const low = upTo(sums, row, b) - upTo(sums, row, a);
  const high = upTo(sums, row + BINS + 1, b) - upTo(sums, row + BINS + 1, a);
  return Math.min(1, Math.max(0, (low + share * (high - low)) / (b - a)));
}
