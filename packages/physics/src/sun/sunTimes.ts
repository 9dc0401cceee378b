import { finite, Refusal, within } from '../refusal.ts';
import { ridders } from '../ridders.ts';
import { decimalYear, deltaT } from './deltaT.ts';
import { blankGeocentricSun, dayJ2000, geocentricSun, meanSiderealTime } from './geocentricSun.ts';
import { sunPosition } from './sunPosition.ts';

const RAD = Math.PI / 180;
const DAY_MS = 86_400_000;
/** Centre of the sun at rise and set: 34′ of refraction and 16′ of radius below the horizon. */
const RISE_ELEVATION_DEG = -0.8333;
/** Near the polar edge the lowest and highest sun are not exactly half a day from noon. */
const EDGE_MS = 20 * 60_000;

export interface SunTimesInput {
  readonly latitudeDeg: number;
  readonly longitudeDeg: number;
  /** Civil date whose noon is meant, `2025-06-21`. */
  readonly dateLocal: string;
  /** Fixed offset of the civil clock, hours east of UTC. */
  readonly utcOffsetH: number;
  /** TT − UT1, s. Default: Espenak and Meeus. */
  readonly deltaTS?: number;
}

export interface SunTimes {
  readonly state: 'normal' | 'polar-day' | 'polar-night';
  /** Solar noon inside the civil date, UNIX ms. */
  readonly noonMs: number;
  /** Unrefracted zenith angle at noon. */
  readonly trueZenithAtNoonDeg: number;
  /** Last upward crossing before noon; may lie on the civil day before. Undefined where the sun does not cross. */
  readonly sunriseMs: number | undefined;
  /** First downward crossing after noon; may lie on the civil day after. */
  readonly sunsetMs: number | undefined;
  readonly dayLengthH: number | undefined;
}

/** UNIX ms of 00:00 UTC of a date written `2025-06-21`. @throws {Refusal} `inconsistent`. */
export function parseDate(text: string, at: string): number {
  const parts = /^(\d{4})-(\d{2})-(\d{2})$/.exec(text);
  const ms = parts ? Date.UTC(Number(parts[1]), Number(parts[2]) - 1, Number(parts[3])) : Number.NaN;
  if (!Number.isFinite(ms) || new Date(ms).toISOString().slice(0, 10) !== text) {
    const mend = 'Write year, month and day with two hyphens.';
    throw new Refusal({ code: 'inconsistent', at, got: text, want: 'a date such as 2025-06-21', mend });
  }
  return ms;
}

const geo = blankGeocentricSun();

/** Solar noon (zero of the geocentric hour angle) inside the civil day that begins at `civilStartMs`. */
function solarNoon(civilStartMs: number, longitudeDeg: number, deltaTS: number): number {
  let t = civilStartMs + DAY_MS / 2;
  const towardsNoon = (): void => {
    const day = dayJ2000(t);
    geocentricSun(day, deltaTS, geo);
    const h = meanSiderealTime(day) + geo.equationOfEquinoxes + longitudeDeg * RAD - geo.rightAscension;
    t -= (Math.atan2(Math.sin(h), Math.cos(h)) / (2 * Math.PI)) * DAY_MS;
  };
  for (let turn = 0; turn < 4; turn++) towardsNoon();
  const move = t < civilStartMs ? DAY_MS : t >= civilStartMs + DAY_MS ? -DAY_MS : 0;
  if (move !== 0) {
    t += move;
    for (let turn = 0; turn < 3; turn++) towardsNoon();
  }
  return t;
}

/** Time of the extreme of `height` within 20 minutes of t: golden section, sign +1 for the highest. */
function extremeNear(height: (ms: number) => number, t: number, sign: 1 | -1): number {
  const golden = (Math.sqrt(5) - 1) / 2;
  let [a, b] = [t - EDGE_MS, t + EDGE_MS];
  while (b - a > 500) {
    const [left, right] = [b - golden * (b - a), a + golden * (b - a)];
    if (sign * height(left) > sign * height(right)) b = right;
    else a = left;
  }
  return 0.5 * (a + b);
}

/**
 * Sunrise, solar noon and sunset of a civil date.
 *
 * Noon is the zero of the hour angle inside the date; rise and set are the crossings of −0.8333°
 * true topocentric elevation before and after it, at sea level with a flat horizon. Within 1 s of the
 * full algorithm; real air moves a crossing by a minute or more, hills by as much as they are high.
 *
 * @throws {Refusal} `outside-range`, `inconsistent`, `not-finite`.
 *
 * Source: Reda and Andreas 2004 for the sun; roots are found on it directly, for the short
 * interpolation of its appendix is minutes off where the event falls on a neighbouring date.
 */
export function sunTimes(input: SunTimesInput): SunTimes {
  const { latitudeDeg, longitudeDeg } = input;
  within(latitudeDeg, -90, 90, 'latitudeDeg', 'Give degrees, north positive.');
  within(longitudeDeg, -180, 180, 'longitudeDeg', 'Give degrees, east positive.');
  within(input.utcOffsetH, -14, 14, 'utcOffsetH', 'Give hours east of UTC.');
  const civilStartMs = parseDate(input.dateLocal, 'dateLocal') - input.utcOffsetH * 3_600_000;
  const deltaTS = finite(input.deltaTS ?? deltaT(decimalYear(civilStartMs)), 'deltaTS', 'Give seconds.');
  const site = { latitudeDeg, longitudeDeg, altitudeM: 0, deltaTS };
  const height = (timeMs: number): number => 90 - sunPosition({ ...site, timeMs }).trueZenithDeg - RISE_ELEVATION_DEG;

  const noonMs = solarNoon(civilStartMs, longitudeDeg, deltaTS);
  const about = { noonMs, trueZenithAtNoonDeg: sunPosition({ ...site, timeMs: noonMs }).trueZenithDeg };
  const none = { sunriseMs: undefined, sunsetMs: undefined, dayLengthH: undefined };

  const highMs = height(noonMs) > 0 ? noonMs : extremeNear(height, noonMs, 1);
  if (!(height(highMs) > 0)) return { state: 'polar-night', ...about, ...none };

  const crossing = (side: 1 | -1): number | undefined => {
    const midnightMs = noonMs + (side * DAY_MS) / 2;
    const lowMs = height(midnightMs) < 0 ? midnightMs : extremeNear(height, midnightMs, -1);
    const low = height(lowMs);
    return low < 0 ? ridders(height, lowMs, low, highMs, height(highMs), 1) : undefined;
  };
  const sunriseMs = crossing(-1);
  const sunsetMs = crossing(1);
  if (sunriseMs === undefined && sunsetMs === undefined) return { state: 'polar-day', ...about, ...none };
  // on the day the midnight sun begins or ends, one of the two is missing
  const dayLengthH = sunriseMs !== undefined && sunsetMs !== undefined ? (sunsetMs - sunriseMs) / 3_600_000 : undefined;
  return { state: 'normal', ...about, sunriseMs, sunsetMs, dayLengthH };
}
