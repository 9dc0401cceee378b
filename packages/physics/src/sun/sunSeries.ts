import { finite, positive, Refusal, within } from '../refusal.ts';
import { SOLAR_CONSTANT_W_M2 } from './extraterrestrial.ts';
import { fastAcos, fastAtan2 } from './fastAngles.ts';
import { dayJ2000 } from './geocentricSun.ts';
import { REFRACTION_EDGE_DEG, refractionDeg } from './refraction.ts';
import { laySunKnots, readSunKnots, type SunReading } from './sunKnots.ts';
import { type CheckedSunSite, checkSunSite, observerRadii, type SunSite, sunPosition } from './sunPosition.ts';

const RAD = Math.PI / 180;
const DEG = 180 / Math.PI;
const PARALLAX = (8.794 / 3600) * RAD;
/** Inside a block of three hours everything but the hour angle runs straight. */
const BLOCK_S = 10_800;
const REFRACTION_CELLS = 4096;
const LOWEST_UP = Math.sin(REFRACTION_EDGE_DEG * RAD);

/** Sun of many instants. Directions and zenith are the apparent ones (refracted), as light arrives. */
export interface SunSeries {
  readonly count: number;
  readonly apparentZenithDeg: Float64Array;
  /** Clockwise from true north, 0…360. */
  readonly azimuthDeg: Float64Array;
  /** Unit vector to the sun: east, north, up. */
  readonly east: Float64Array;
  readonly north: Float64Array;
  readonly up: Float64Array;
  /** 1366.1 / R², W/m². */
  readonly etrNormalWM2: Float64Array;
}

export interface SunSeriesInput extends SunSite {
  /** First instant, UNIX ms. */
  readonly startMs: number;
  readonly stepS: number;
  readonly count: number;
}

function blankSeries(count: number): SunSeries {
  const column = (): Float64Array => new Float64Array(count);
  return {
    count,
    apparentZenithDeg: column(),
    azimuthDeg: column(),
    east: column(),
    north: column(),
    up: column(),
    etrNormalWM2: column(),
  };
}

/** Where the steps of one unbroken stretch lie, and where they go in the columns. */
interface Stretch {
  readonly startMs: number;
  readonly stepS: number;
  readonly from: number;
  readonly to: number;
}

/** Writes unrefracted unit vectors: the hour angle turns step by step, all else runs straight in a block. */
function layVectors(out: SunSeries, { startMs, stepS, from, to }: Stretch, site: CheckedSunSite): void {
  const { east, north, up, etrNormalWM2 } = out;
  const startDay = dayJ2000(startMs);
  const stepDays = stepS / 86_400;
  const knots = laySunKnots(startDay, startDay + stepDays * (to - from), site.deltaTS);
  const longitude = site.longitudeDeg * RAD;
  const sinPhi = Math.sin(site.latitudeDeg * RAD);
  const cosPhi = Math.cos(site.latitudeDeg * RAD);
  // parallax: the observer is a constant in the horizontal frame
  const { x, y } = observerRadii(site.latitudeDeg, site.altitudeM);
  const observerNorth = y * cosPhi - x * sinPhi;
  const observerUp = x * cosPhi + y * sinPhi;

  const blockSteps = Math.max(1, Math.floor(BLOCK_S / stepS));
  const first: SunReading = { greenwichHourAngle: 0, sinDeclination: 0, distanceAu: 1 };
  const last: SunReading = { greenwichHourAngle: 0, sinDeclination: 0, distanceAu: 1 };
  for (let start = from; start < to; start += blockSteps) {
    const steps = Math.min(blockSteps, to - start);
    readSunKnots(knots, startDay + (start - from) * stepDays, first);
    readSunKnots(knots, startDay + (start - from + steps) * stepDays, last);
    const turn = (last.greenwichHourAngle - first.greenwichHourAngle) / steps;
    const cosTurn = Math.cos(turn);
    const sinTurn = Math.sin(turn);
    let cosH = Math.cos(longitude + first.greenwichHourAngle);
    let sinH = Math.sin(longitude + first.greenwichHourAngle);
    let s = first.sinDeclination;
    let c = Math.sqrt(1 - s * s);
    let r = first.distanceAu;
    const sStep = (last.sinDeclination - s) / steps;
    const cStep = (Math.sqrt(1 - last.sinDeclination * last.sinDeclination) - c) / steps;
    const rStep = (last.distanceAu - r) / steps;
    for (let i = start; i < start + steps; i++) {
      const p = PARALLAX / r;
      const e = -c * sinH;
      const n = s * cosPhi - c * cosH * sinPhi - p * observerNorth;
      const u = s * sinPhi + c * cosH * cosPhi - p * observerUp;
      const f = 1.5 - 0.5 * (e * e + n * n + u * u); // back to length one, without a root
      east[i] = e * f;
      north[i] = n * f;
      up[i] = u * f;
      etrNormalWM2[i] = SOLAR_CONSTANT_W_M2 / (r * r);
      const turned = cosH * cosTurn - sinH * sinTurn;
      sinH = sinH * cosTurn + cosH * sinTurn;
      cosH = turned;
      s += sStep;
      c += cStep;
      r += rStep;
    }
  }
}

/** Refraction in radians over the sine of true elevation, from the set sun to the zenith. */
function refractionTable(site: CheckedSunSite): Float64Array {
  const table = new Float64Array(REFRACTION_CELLS + 2);
  for (let k = 0; k <= REFRACTION_CELLS; k++) {
    const sine = LOWEST_UP + ((1 - LOWEST_UP) * k) / REFRACTION_CELLS;
    const elevationDeg = Math.max(REFRACTION_EDGE_DEG, Math.asin(Math.min(1, sine)) * DEG);
    table[k] = refractionDeg(elevationDeg, site.pressurePa, site.temperatureC) * RAD;
  }
  return table;
}

/** Lifts the vectors by refraction, in place, and writes the two angles. */
function refractAndMeasure(out: SunSeries, { from, to }: Stretch, table: Float64Array): void {
  const { east, north, up, apparentZenithDeg, azimuthDeg } = out;
  const perSine = REFRACTION_CELLS / (1 - LOWEST_UP);
  for (let i = from; i < to; i++) {
    const u = up[i];
    let zenith = fastAcos(u);
    const azimuth = fastAtan2(east[i], north[i]) * DEG;
    azimuthDeg[i] = azimuth < 0 ? azimuth + 360 : azimuth;
    if (u >= LOWEST_UP) {
      const place = (Math.min(u, 1) - LOWEST_UP) * perSine;
      const k = Math.floor(place);
      const lift = table[k] + (place - k) * (table[k + 1] - table[k]);
      const flat = Math.sqrt(1 - u * u);
      if (flat > 1e-9) {
        // turn the vector upwards by the lift; sine and cosine of an angle below 0.01 rad
        const sinLift = lift - (lift * lift * lift) / 6;
        const cosLift = 1 - 0.5 * lift * lift;
        const shrink = cosLift - (u / flat) * sinLift;
        east[i] *= shrink;
        north[i] *= shrink;
        up[i] = u * cosLift + flat * sinLift;
      }
      zenith -= lift;
    }
    apparentZenithDeg[i] = zenith * DEG;
  }
}

/** Refuses a count that is no whole number of steps. */
function checkCount(count: number): number {
  within(count, 1, 10_000_000, 'count', 'Give the number of steps.');
  if (!Number.isInteger(count)) {
    throw new Refusal({ code: 'outside-range', at: 'count', got: count, want: 'a whole number', mend: 'Round it.' });
  }
  return count;
}

/**
 * Sun at `count` instants of even step: the fast way through a year.
 *
 * The slow quantities come from the full algorithm every four days and are interpolated; between
 * them only the hour angle turns. Within 1·10⁻⁴° of `sunPosition` in apparent zenith and 3·10⁻⁵° in
 * azimuth·sin z between 1990 and 2060.
 *
 * @throws {Refusal} `outside-range`, `not-positive`, `not-finite`.
 *
 * Source: Reda and Andreas 2004 for the sun; the shortcut is our own and is held against it in the tests.
 */
export function sunSeries(input: SunSeriesInput): SunSeries {
  const site = checkSunSite(input);
  const startMs = finite(input.startMs, 'startMs', 'Give the first instant in milliseconds since 1970, UTC.');
  const stepS = positive(input.stepS, 'stepS', 'Give the step in seconds, 3600 for hours.');
  const count = checkCount(input.count);
  const out = blankSeries(count);
  const stretch = { startMs, stepS, from: 0, to: count };
  layVectors(out, stretch, site);
  refractAndMeasure(out, stretch, refractionTable(site));
  return out;
}

/** Ends (exclusive) of the run of even steps that begins at `from`. */
function stretchEnd(timesMs: ArrayLike<number>, from: number): number {
  if (from + 2 > timesMs.length) return timesMs.length;
  const stepMs = timesMs[from + 1] - timesMs[from];
  if (!(stepMs > 0)) return from + 1;
  let to = from + 2;
  while (to < timesMs.length && timesMs[to] - timesMs[to - 1] === stepMs) to++;
  return to;
}

/** Writes one instant by the full algorithm. */
function layOne(out: SunSeries, i: number, timeMs: number, site: SunSite): void {
  const sun = sunPosition({ ...site, timeMs });
  const z = sun.apparentZenithDeg * RAD;
  const a = sun.azimuthDeg * RAD;
  out.apparentZenithDeg[i] = sun.apparentZenithDeg;
  out.azimuthDeg[i] = sun.azimuthDeg;
  out.east[i] = Math.sin(z) * Math.sin(a);
  out.north[i] = Math.sin(z) * Math.cos(a);
  out.up[i] = Math.cos(z);
  out.etrNormalWM2[i] = sun.etrNormalDistanceWM2;
}

/**
 * Sun at given instants, in any order: rows of a typical year come from many years, so each unbroken
 * run of even steps goes the way of `sunSeries` and every lone row the full way.
 *
 * @param timesMs  UNIX ms, one a row.
 * @throws {Refusal} as `sunSeries`; `not-finite` names the row.
 */
export function sunAtInstants(timesMs: ArrayLike<number>, site: SunSite): SunSeries {
  const checked = checkSunSite(site);
  const out = blankSeries(timesMs.length);
  const table = refractionTable(checked);
  for (let from = 0; from < timesMs.length; ) {
    const startMs = finite(timesMs[from], `timesMs[${from}]`, 'Give every row an instant.');
    const to = stretchEnd(timesMs, from);
    const stepS = to - from > 1 ? (timesMs[from + 1] - startMs) / 1000 : 0;
    const knots = 7 + ((to - from) * stepS) / 345_600;
    if (to - from > knots) {
      const stretch = { startMs, stepS, from, to };
      layVectors(out, stretch, checked);
      refractAndMeasure(out, stretch, table);
    } else {
      for (let i = from; i < to; i++) layOne(out, i, timesMs[i], site);
    }
    from = to;
  }
  return out;
}
