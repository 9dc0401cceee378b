/** True elevation below which the sun counts as set and is not refracted: 16′ radius and 34′ of air, degrees. */
export const REFRACTION_EDGE_DEG = -(0.26667 + 0.5667);

/**
 * Lift of the sun by the atmosphere, degrees to add to the true elevation e (degrees):
 *
 *     Δe = p/101000 · 283/(273 + T) · 1.02 / (60 tan(e + 10.3/(e + 5.11)))
 *
 * Zero below a true elevation of −0.83337°. Near the horizon real air can differ by 0.1°.
 *
 * Source: Reda and Andreas 2004, Solar Energy 76(5), equation 42.
 */
export function refractionDeg(trueElevationDeg: number, pressurePa: number, temperatureC: number): number {
  if (trueElevationDeg < REFRACTION_EDGE_DEG) return 0;
  const argument = trueElevationDeg + 10.3 / (trueElevationDeg + 5.11);
  const air = (pressurePa / 101_000) * (283 / (273 + temperatureC));
  return (air * 1.02) / (60 * Math.tan((argument * Math.PI) / 180));
}
