import { within } from '../refusal.ts';

/** Solar constant used throughout, W/m². */
export const SOLAR_CONSTANT_W_M2 = 1366.1;

/** Extraterrestrial normal irradiance from the distance of the sun, W/m²: 1366.1 / R². */
export function etrNormalDistance(distanceAu: number): number {
  return SOLAR_CONSTANT_W_M2 / (distanceAu * distanceAu);
}

/**
 * Extraterrestrial normal irradiance from the day of the year, W/m²; B = 2π(day − 1)/365:
 *
 *     1366.1 · (1.00011 + 0.034221 cos B + 0.00128 sin B + 0.000719 cos 2B + 0.000077 sin 2B)
 *
 * @throws {Refusal} `outside-range` unless 1 ≤ day ≤ 366.
 *
 * Within 0.1 % of the true distance. Source: Spencer 1971, Search 2(5), 172.
 */
export function etrNormalSpencer1971(dayOfYear: number): number {
  within(dayOfYear, 1, 366, 'dayOfYear', 'Count 1 January as day 1.');
  const b = (2 * Math.PI * (dayOfYear - 1)) / 365;
  return (
    SOLAR_CONSTANT_W_M2 *
    (1.00011 + 0.034221 * Math.cos(b) + 0.00128 * Math.sin(b) + 0.000719 * Math.cos(2 * b) + 0.000077 * Math.sin(2 * b))
  );
}

/** Day of the year of an instant in UTC, 1 to 366. */
export function dayOfYearUtc(timeMs: number): number {
  const newYearMs = Date.UTC(new Date(timeMs).getUTCFullYear(), 0, 1);
  return Math.floor((timeMs - newYearMs) / 86_400_000) + 1;
}
