/**
 * Arc cosine to 2·10⁻⁸ rad, several times faster than the exact one: √(1 − x) times a polynomial.
 *
 * Source: Abramowitz and Stegun 1964, 4.4.46.
 */
export function fastAcos(x: number): number {
  const a = x < 0 ? -x : x;
  const p =
    1.570796305 +
    a *
      (-0.2145988016 +
        a *
          (0.0889789874 +
            a * (-0.0501743046 + a * (0.030891881 + a * (-0.0170881256 + a * (0.0066700901 - a * 0.0012624911))))));
  const acos = a < 1 ? Math.sqrt(1 - a) * p : 0;
  return x < 0 ? Math.PI - acos : acos;
}

/**
 * Arc tangent of y/x in all four quadrants to 2·10⁻⁸ rad; 0 at the origin.
 *
 * Source: Abramowitz and Stegun 1964, 4.4.49.
 */
export function fastAtan2(y: number, x: number): number {
  const ax = x < 0 ? -x : x;
  const ay = y < 0 ? -y : y;
  const steep = ay > ax;
  const t = steep ? ax / ay : ax > 0 ? ay / ax : 0;
  const q = t * t;
  const p =
    1 +
    q *
      (-0.3333314528 +
        q *
          (0.1999355085 +
            q *
              (-0.1420889944 +
                q * (0.1065626393 + q * (-0.07528964 + q * (0.0429096138 + q * (-0.0161657367 + q * 0.0028662257)))))));
  let angle = t * p;
  if (steep) angle = Math.PI / 2 - angle;
  if (x < 0) angle = Math.PI - angle;
  return y < 0 ? -angle : angle;
}
