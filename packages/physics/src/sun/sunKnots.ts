import { deltaT } from './deltaT.ts';
import { blankGeocentricSun, geocentricSun, meanSiderealTime } from './geocentricSun.ts';

const TURN = 2 * Math.PI;
/** Four days and six points: 1.0·10⁻⁵° against the full algorithm. */
const KNOT_DAYS = 4;

/** What moves slowly about the sun, every four days, with three knots to spare at both ends. */
export interface SunKnots {
  /** Day since J2000.0 of the first knot. */
  readonly firstDay: number;
  /** Greenwich hour angle minus one turn a day since `firstDay`, rad: the equation of time, in effect. */
  readonly drift: Float64Array;
  readonly sinDeclination: Float64Array;
  readonly distanceAu: Float64Array;
}

/** Sun at one moment, read off the knots. */
export interface SunReading {
  /** Hour angle seen from Greenwich, rad, not folded. */
  greenwichHourAngle: number;
  sinDeclination: number;
  distanceAu: number;
}

/** Lays the knots for a stretch of days since J2000.0; ΔT is worked out per knot unless given. */
export function laySunKnots(fromDay: number, toDay: number, deltaTS: number | undefined): SunKnots {
  const firstDay = fromDay - 3 * KNOT_DAYS;
  const count = Math.ceil((toDay - fromDay) / KNOT_DAYS) + 7;
  const drift = new Float64Array(count);
  const sinDeclination = new Float64Array(count);
  const distanceAu = new Float64Array(count);
  const sun = blankGeocentricSun();
  for (let k = 0; k < count; k++) {
    const day = firstDay + k * KNOT_DAYS;
    geocentricSun(day, deltaTS ?? deltaT(2000 + day / 365.25), sun);
    const g = meanSiderealTime(day) + sun.equationOfEquinoxes - sun.rightAscension - TURN * (day - firstDay);
    drift[k] = g - TURN * Math.round((g - (k > 0 ? drift[k - 1] : 0)) / TURN); // no jump between knots
    sinDeclination[k] = Math.sin(sun.declination);
    distanceAu[k] = sun.distanceAu;
  }
  return { firstDay, drift, sinDeclination, distanceAu };
}

/** Reads the sun at a day since J2000.0 by six-point Lagrange interpolation; writes and returns `out`. */
export function readSunKnots(knots: SunKnots, day: number, out: SunReading): SunReading {
  const { firstDay, drift, sinDeclination, distanceAu } = knots;
  const place = (day - firstDay) / KNOT_DAYS;
  const k = Math.floor(place);
  const u = place - k;
  const a = u + 2;
  const b = u + 1;
  const d = u - 1;
  const e = u - 2;
  const f = u - 3;
  const w0 = (-b * u * d * e * f) / 120;
  const w1 = (a * u * d * e * f) / 24;
  const w2 = (-a * b * d * e * f) / 12;
  const w3 = (a * b * u * e * f) / 12;
  const w4 = (-a * b * u * d * f) / 24;
  const w5 = (a * b * u * d * e) / 120;
  const g = drift;
  const s = sinDeclination;
  const r = distanceAu;
  out.greenwichHourAngle =
    TURN * (day - firstDay) +
    (w0 * g[k - 2] + w1 * g[k - 1] + w2 * g[k] + w3 * g[k + 1] + w4 * g[k + 2] + w5 * g[k + 3]);
  out.sinDeclination = w0 * s[k - 2] + w1 * s[k - 1] + w2 * s[k] + w3 * s[k + 1] + w4 * s[k + 2] + w5 * s[k + 3];
  out.distanceAu = w0 * r[k - 2] + w1 * r[k - 1] + w2 * r[k] + w3 * r[k + 1] + w4 * r[k + 2] + w5 * r[k + 3];
  return out;
}
