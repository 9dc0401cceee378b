import { latitudeTerms, longitudeTerms, nutationCoefficients, nutationMultipliers, radiusTerms } from './spaTerms.ts';

const RAD = Math.PI / 180;

/** Where the sun stands as seen from the centre of the Earth. Angles in radians. */
export interface GeocentricSun {
  /** Apparent right ascension α. */
  rightAscension: number;
  /** Declination δ. */
  declination: number;
  /** Distance R, AU. */
  distanceAu: number;
  /** Δψ·cos ε: what turns mean into apparent sidereal time. */
  equationOfEquinoxes: number;
  /** Heliocentric longitude L, not folded. */
  heliocentricLongitude: number;
  /** Heliocentric latitude B. */
  heliocentricLatitude: number;
  /** Nutation in longitude Δψ. */
  nutationLongitude: number;
  /** True obliquity ε. */
  obliquity: number;
}

/** Σ over powers of τ of Σ A·cos(B + C·τ), the rows laid flat. */
function periodic(tables: readonly (readonly number[])[], tau: number): number {
  let sum = 0;
  for (let power = tables.length - 1; power >= 0; power--) {
    const rows = tables[power] as readonly number[];
    let part = 0;
    for (let k = 0; k < rows.length; k += 3) part += rows[k] * Math.cos(rows[k + 1] + rows[k + 2] * tau);
    sum = sum * tau + part;
  }
  return sum / 1e8;
}

/** Writes nutation in longitude and obliquity (radians) for Julian ephemeris centuries t into `out`. */
function nutation(t: number, out: { longitude: number; obliquity: number }): void {
  const x0 = 297.85036 + t * (445267.11148 + t * (-0.0019142 + t / 189474));
  const x1 = 357.52772 + t * (35999.05034 + t * (-0.0001603 - t / 300000));
  const x2 = 134.96298 + t * (477198.867398 + t * (0.0086972 + t / 56250));
  const x3 = 93.27191 + t * (483202.017538 + t * (-0.0036825 + t / 327270));
  const x4 = 125.04452 + t * (-1934.136261 + t * (0.0020708 + t / 450000));
  const y = nutationMultipliers;
  const c = nutationCoefficients;
  let longitude = 0;
  let obliquity = 0;
  for (let i = 0, j = 0; i < c.length; i += 4, j += 5) {
    const angle = (x0 * y[j] + x1 * y[j + 1] + x2 * y[j + 2] + x3 * y[j + 3] + x4 * y[j + 4]) * RAD;
    longitude += (c[i] + c[i + 1] * t) * Math.sin(angle);
    obliquity += (c[i + 2] + c[i + 3] * t) * Math.cos(angle);
  }
  out.longitude = (longitude / 36e6) * RAD;
  out.obliquity = (obliquity / 36e6) * RAD;
}

/** Mean obliquity of the ecliptic, radians, for Julian ephemeris millennia τ. */
function meanObliquity(tau: number): number {
  const u = tau / 10;
  const c = [84381.448, -4680.93, -1.55, 1999.25, -51.38, -249.67, -39.05, 7.12, 27.87, 5.79, 2.45];
  let seconds = 0;
  for (let k = c.length - 1; k >= 0; k--) seconds = seconds * u + c[k];
  return (seconds / 3600) * RAD;
}

const nutated = { longitude: 0, obliquity: 0 };

/**
 * The slow part of the solar position algorithm: everything that does not know where the observer stands.
 *
 * @param dayJ2000  Days of UT1 since J2000.0 (2000-01-01 12:00).
 * @param deltaTS   TT − UT1, s.
 * @param out       Written and returned, so that a series allocates nothing.
 *
 * Good to 0.0003° from −2000 to 6000. Source: Reda and Andreas 2004, Solar Energy 76(5), 577, steps 3.2 to 3.10.
 */
export function geocentricSun(dayJ2000: number, deltaTS: number, out: GeocentricSun): GeocentricSun {
  const t = (dayJ2000 + deltaTS / 86400) / 36525;
  const tau = t / 10;
  const longitude = periodic(longitudeTerms, tau);
  const latitude = periodic(latitudeTerms, tau);
  const distance = periodic(radiusTerms, tau);
  nutation(t, nutated);

  const obliquity = meanObliquity(tau) + nutated.obliquity;
  const aberration = ((-20.4898 / 3600) * RAD) / distance;
  const lambda = longitude + Math.PI + nutated.longitude + aberration; // apparent longitude of the sun
  const beta = -latitude;
  const sinLambda = Math.sin(lambda);
  const cosE = Math.cos(obliquity);
  const sinE = Math.sin(obliquity);

  out.rightAscension = Math.atan2(sinLambda * cosE - Math.tan(beta) * sinE, Math.cos(lambda));
  out.declination = Math.asin(Math.sin(beta) * cosE + Math.cos(beta) * sinE * sinLambda);
  out.distanceAu = distance;
  out.equationOfEquinoxes = nutated.longitude * cosE;
  out.heliocentricLongitude = longitude;
  out.heliocentricLatitude = latitude;
  out.nutationLongitude = nutated.longitude;
  out.obliquity = obliquity;
  return out;
}

/** An empty record for `geocentricSun` to write into. */
export function blankGeocentricSun(): GeocentricSun {
  return {
    rightAscension: 0,
    declination: 0,
    distanceAu: 1,
    equationOfEquinoxes: 0,
    heliocentricLongitude: 0,
    heliocentricLatitude: 0,
    nutationLongitude: 0,
    obliquity: 0,
  };
}

/** Days of UT1 since J2000.0 for a UNIX time in milliseconds. */
export function dayJ2000(timeMs: number): number {
  return timeMs / 86_400_000 - 10957.5;
}

/** Greenwich mean sidereal time, radians, not folded. Source: Reda and Andreas 2004, equation 28. */
export function meanSiderealTime(day: number): number {
  const t = day / 36525;
  return (280.46061837 + 360.98564736629 * day + t * t * (0.000387933 - t / 38_710_000)) * RAD;
}

/** Mean longitude of the sun, degrees, not folded; for the equation of time. */
export function meanSunLongitudeDeg(day: number, deltaTS: number): number {
  const tau = (day + deltaTS / 86400) / 365250;
  const c = [280.4664567, 360007.6982779, 0.03032028, 1 / 49931, -1 / 15300, -1 / 2e6];
  let sum = 0;
  for (let k = c.length - 1; k >= 0; k--) sum = sum * tau + c[k];
  return sum;
}
