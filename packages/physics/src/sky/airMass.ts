import { within } from '../refusal.ts';

const RAD = Math.PI / 180;

/**
 * Relative optical air mass: how many times the vertical path the beam crosses.
 *
 *     m = 1 / (cos z + 0.50572 (96.07995° − z)^−1.6364)
 *
 * @param apparentZenithDeg  Refracted zenith angle.
 * @returns 1 overhead, about 38 at the horizon; `undefined` below it.
 * @throws {Refusal} `outside-range`.
 *
 * Source: Kasten and Young 1989, Applied Optics 28(22), 4735.
 */
export function airMassKastenYoung1989(apparentZenithDeg: number): number | undefined {
  within(apparentZenithDeg, 0, 180, 'apparentZenithDeg', 'Give the angle from overhead in degrees.');
  return apparentZenithDeg > 90 ? undefined : kastenYoung(apparentZenithDeg);
}

/** The bare formula, 0 ≤ z ≤ 90°. */
function kastenYoung(zenithDeg: number): number {
  return 1 / (Math.cos(zenithDeg * RAD) + 0.50572 * (96.07995 - zenithDeg) ** -1.6364);
}

const CELLS = 4096;
const table = new Float64Array(CELLS + 2);
for (let k = 0; k <= CELLS; k++) table[k] = kastenYoung((90 * k) / CELLS);
table[CELLS + 1] = table[CELLS];

/** The same by linear interpolation for the loops of a year, 0 ≤ z ≤ 90° unchecked; within 3·10⁻⁵ of it. */
export function airMassTable(zenithDeg: number): number {
  const place = zenithDeg * (CELLS / 90);
  const k = Math.floor(place);
  return table[k] + (place - k) * (table[k + 1] - table[k]);
}
