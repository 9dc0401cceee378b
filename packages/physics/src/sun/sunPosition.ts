import { finite, positive, within } from '../refusal.ts';
import { decimalYear, deltaT } from './deltaT.ts';
import { dayOfYearUtc, etrNormalDistance, etrNormalSpencer1971 } from './extraterrestrial.ts';
import { blankGeocentricSun, dayJ2000, geocentricSun, meanSiderealTime, meanSunLongitudeDeg } from './geocentricSun.ts';
import { refractionDeg } from './refraction.ts';
import { stationPressure } from './stationPressure.ts';

const DEG = 180 / Math.PI;
const RAD = Math.PI / 180;

/** Where the observer stands and what air is above him. */
export interface SunSite {
  /** Degrees, north positive. */
  readonly latitudeDeg: number;
  /** Degrees, east positive. */
  readonly longitudeDeg: number;
  /** Above sea level, m. Default 0. */
  readonly altitudeM?: number;
  /** Mean pressure for refraction, Pa. Default: the standard atmosphere at the altitude. */
  readonly pressurePa?: number;
  /** Mean air temperature for refraction, °C. Default 12. */
  readonly temperatureC?: number;
  /** TT − UT1, s. Default: Espenak and Meeus for the year. */
  readonly deltaTS?: number;
}

export interface SunInstant extends SunSite {
  /** UNIX time, ms; UTC is taken for UT1, which is off by 0.9 s at most (0.004°). */
  readonly timeMs: number;
}

export interface SunPosition {
  /** Zenith angle with refraction: where the eye sees the sun. */
  readonly apparentZenithDeg: number;
  /** Zenith angle without refraction. */
  readonly trueZenithDeg: number;
  /** Clockwise from true north, 0 ≤ azimuth < 360. */
  readonly azimuthDeg: number;
  /** Apparent minus mean solar time, minutes. */
  readonly equationOfTimeMin: number;
  readonly earthSunDistanceAu: number;
  /** 1366.1 / R², W/m². */
  readonly etrNormalDistanceWM2: number;
  /** 1366.1 × the series of Spencer 1971 at the UTC day, W/m². */
  readonly etrNormalSpencerWM2: number;
  readonly dayOfYearUtc: number;
}

/** A site with every default filled in and every number checked. */
export interface CheckedSunSite {
  readonly latitudeDeg: number;
  readonly longitudeDeg: number;
  readonly altitudeM: number;
  readonly pressurePa: number;
  readonly temperatureC: number;
  readonly deltaTS: number | undefined;
}

/** Fills in the defaults of a site. @throws {Refusal} `outside-range`, `not-positive`, `not-finite`. */
export function checkSunSite(site: SunSite): CheckedSunSite {
  const altitudeM = site.altitudeM ?? 0;
  within(site.latitudeDeg, -90, 90, 'latitudeDeg', 'Give degrees, north positive.');
  within(site.longitudeDeg, -180, 180, 'longitudeDeg', 'Give degrees, east positive.');
  const pressurePa = site.pressurePa ?? stationPressure(altitudeM);
  const temperatureC = site.temperatureC ?? 12;
  within(altitudeM, -500, 11_000, 'altitudeM', 'Give the height above sea level in metres.');
  positive(pressurePa, 'pressurePa', 'Give pascals (sea level: 101325), or leave it out.');
  within(temperatureC, -100, 100, 'temperatureC', 'Give degrees Celsius, or leave it out.');
  const deltaTS = site.deltaTS === undefined ? undefined : finite(site.deltaTS, 'deltaTS', 'Give seconds.');
  return {
    latitudeDeg: site.latitudeDeg,
    longitudeDeg: site.longitudeDeg,
    altitudeM,
    pressurePa,
    temperatureC,
    deltaTS,
  };
}

/** Degrees folded into 0 ≤ x < 360. */
export function fold360(deg: number): number {
  const folded = deg % 360;
  return folded < 0 ? folded + 360 : folded;
}

const geo = blankGeocentricSun();

/** Observer's distance from the Earth's axis (x) and equator plane (y), in equatorial radii. */
export function observerRadii(latitudeDeg: number, altitudeM: number): { readonly x: number; readonly y: number } {
  const phi = latitudeDeg * RAD;
  const u = Math.atan(0.99664719 * Math.tan(phi));
  const h = altitudeM / 6_378_140;
  return { x: Math.cos(u) + h * Math.cos(phi), y: 0.99664719 * Math.sin(u) + h * Math.sin(phi) };
}

/** Apparent minus mean solar time, minutes, from the last geocentric sun. */
function equationOfTime(day: number, deltaTS: number): number {
  const deg = meanSunLongitudeDeg(day, deltaTS) - 0.0057183 - (geo.rightAscension - geo.equationOfEquinoxes) * DEG;
  const folded = fold360(deg);
  return 4 * (folded > 180 ? folded - 360 : folded);
}

/**
 * Position of the sun by the full solar position algorithm.
 *
 * Geocentric sun, then parallax of the observer on the ellipsoid, then refraction. Good to 0.0003°
 * from −2000 to 6000; the air near the horizon matters more than the sun does. About 4 µs an instant:
 * a year of steps belongs to `sunSeries`.
 *
 * @throws {Refusal} `outside-range`, `not-positive`, `not-finite`.
 *
 * Source: Reda and Andreas 2004, Solar Energy 76(5), 577–589 (NREL/TP-560-34302).
 */
export function sunPosition(instant: SunInstant): SunPosition {
  const site = checkSunSite(instant);
  const timeMs = finite(instant.timeMs, 'timeMs', 'Give the instant in milliseconds since 1970, UTC.');
  const deltaTS = site.deltaTS ?? deltaT(decimalYear(timeMs));
  const day = dayJ2000(timeMs);
  const { rightAscension: alpha, declination, distanceAu, equationOfEquinoxes } = geocentricSun(day, deltaTS, geo);

  // hour angle and parallax: the observer stands on the surface, not at the centre
  const hourAngle = meanSiderealTime(day) + equationOfEquinoxes + site.longitudeDeg * RAD - alpha;
  const sinXi = Math.sin(((8.794 / 3600) * RAD) / distanceAu);
  const { x, y } = observerRadii(site.latitudeDeg, site.altitudeM);
  const across = Math.cos(declination) - x * sinXi * Math.cos(hourAngle);
  const shift = Math.atan2(-x * sinXi * Math.sin(hourAngle), across); // Δα
  const delta = Math.atan2((Math.sin(declination) - y * sinXi) * Math.cos(shift), across);
  const h = hourAngle - shift;

  const phi = site.latitudeDeg * RAD;
  const sinElevation = Math.sin(phi) * Math.sin(delta) + Math.cos(phi) * Math.cos(delta) * Math.cos(h);
  const elevationDeg = Math.asin(Math.max(-1, Math.min(1, sinElevation))) * DEG;
  const fromSouth = Math.atan2(Math.sin(h), Math.cos(h) * Math.sin(phi) - Math.tan(delta) * Math.cos(phi));
  const dayOfYear = dayOfYearUtc(timeMs);
  return {
    apparentZenithDeg: 90 - elevationDeg - refractionDeg(elevationDeg, site.pressurePa, site.temperatureC),
    trueZenithDeg: 90 - elevationDeg,
    azimuthDeg: fold360(fromSouth * DEG + 180),
    equationOfTimeMin: equationOfTime(day, deltaTS),
    earthSunDistanceAu: distanceAu,
    etrNormalDistanceWM2: etrNormalDistance(distanceAu),
    etrNormalSpencerWM2: etrNormalSpencer1971(dayOfYear),
    dayOfYearUtc: dayOfYear,
  };
}
