/** Weight of the zenith angle cubed (radians) in the clearness. */
export const PEREZ_KAPPA = 1.041;
/** The lowest sun the circumsolar part is divided by. */
export const PEREZ_LOWEST_COS = Math.cos((85 * Math.PI) / 180);

/**
 * F11 F12 F13 F21 F22 F23 for the eight bins of sky clearness, laid flat: the all-sites composite.
 *
 * Source: Perez, Ineichen, Seals, Michalsky and Stewart 1990, Solar Energy 44(5), 271, table 6.
 */
export const perezCoefficients: readonly number[] = [
  -0.008, 0.588, -0.062, -0.06, 0.072, -0.022, 0.13, 0.683, -0.151, -0.019, 0.066, -0.029, 0.33, 0.487, -0.221, 0.055,
  -0.064, -0.026, 0.568, 0.187, -0.295, 0.109, -0.152, -0.014, 0.873, -0.392, -0.362, 0.226, -0.462, 0.001, 1.132,
  -1.237, -0.412, 0.288, -0.823, 0.056, 1.06, -1.6, -0.359, 0.264, -1.127, 0.131, 0.678, -0.327, -0.25, 0.156, -1.377,
  0.251,
];

/** Bin of the clearness ε, 0 (overcast) to 7 (clear). */
export function perezBin(epsilon: number): number {
  if (epsilon < 1.5) return epsilon < 1.065 ? 0 : epsilon < 1.23 ? 1 : 2;
  if (epsilon < 2.8) return epsilon < 1.95 ? 3 : 4;
  return epsilon < 4.5 ? 5 : epsilon < 6.2 ? 6 : 7;
}
