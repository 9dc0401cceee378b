import { within } from '../refusal.ts';

/**
 * Mean pressure at an altitude in the standard atmosphere, Pa:
 *
 *     p = 100 · ((44331.514 − h) / 11880.516)^(1/0.1902632)
 *
 * @throws {Refusal} `outside-range` below −500 m or above 11,000 m, where the lapse rate changes.
 *
 * Source: US Standard Atmosphere 1976 in its usual inverted form (from memory).
 */
export function stationPressure(altitudeM: number): number {
  within(altitudeM, -500, 11_000, 'altitudeM', 'Give the height above sea level in metres.');
  return 100 * ((44331.514 - altitudeM) / 11880.516) ** (1 / 0.1902632);
}
