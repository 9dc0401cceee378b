import { within } from '../refusal.ts';

/** Σ c[k]·t^k. */
const poly = (t: number, ...c: readonly number[]): number => c.reduceRight((sum, ck) => sum * t + ck, 0);

/**
 * ΔT = TT − UT1: how far the clock of the planets runs ahead of the turning Earth, s.
 *
 * @param year  Decimal year, for instance 2025.46 for the middle of June 2025.
 * @throws {Refusal} `outside-range` before 1900 or after 3000.
 *
 * Within 0.1 s of observation up to 2005; later years are a forecast (measured 2025: 69.2 s against
 * 74.7 s here), worth 2·10⁻⁵° of sun position.
 *
 * Source: F. Espenak and J. Meeus, Five Millennium Canon of Solar Eclipses, NASA/TP-2006-214141 (from memory).
 */
export function deltaT(year: number): number {
  within(year, 1900, 3000, 'year', 'Give deltaTS yourself for years outside this range.');
  if (year < 1920) return poly(year - 1900, -2.79, 1.494119, -0.0598939, 0.0061966, -0.000197);
  if (year < 1941) return poly(year - 1920, 21.2, 0.84493, -0.0761, 0.0020936);
  if (year < 1961) return poly(year - 1950, 29.07, 0.407, -1 / 233, 1 / 2547);
  if (year < 1986) return poly(year - 1975, 45.45, 1.067, -1 / 260, -1 / 718);
  if (year < 2005) return poly(year - 2000, 63.86, 0.3345, -0.060374, 0.0017275, 0.000651814, 0.00002373599);
  if (year < 2050) return poly(year - 2000, 62.92, 0.32217, 0.005589);
  const parabola = poly((year - 1820) / 100, -20, 0, 32);
  return year < 2150 ? parabola - 0.5628 * (2150 - year) : parabola;
}

/** Decimal year of an instant, to the middle of its month as the polynomials of ΔT count it. */
export function decimalYear(timeMs: number): number {
  const date = new Date(timeMs);
  return date.getUTCFullYear() + (date.getUTCMonth() + 0.5) / 12;
}
