import { positive, Refusal, within } from '../refusal.ts';

/**
 * Module temperature of every step by Faiman 2008, °C, into a given column.
 *
 *     air + max(poa, 0)/(u0 + u1·max(wind, 0))
 *
 * @param into  Written and returned; may be `airC` itself.
 * @throws {Refusal} `length-mismatch`, `not-positive`, `outside-range`.
 */
export function cellTemperatureSeries(
  poa: ArrayLike<number>,
  airC: ArrayLike<number>,
  windMS: ArrayLike<number>,
  losses: { readonly u0: number; readonly u1: number },
  into: Float64Array = new Float64Array(poa.length),
): Float64Array {
  const u0 = positive(losses.u0, 'u0', 'W/m²K, 25 on an open rack.');
  const u1 = within(losses.u1, 0, 100, 'u1', 'W/m²K per m/s, 6.84 on an open rack.');
  for (const [at, column] of [
    ['airC.length', airC],
    ['windMS.length', windMS],
    ['into.length', into],
  ] as const) {
    if (column.length === poa.length) continue;
    const want = `${poa.length}, one per step`;
    throw new Refusal({ code: 'length-mismatch', at, got: column.length, want, mend: 'Give a row for every step.' });
  }
  for (let i = 0; i < poa.length; i++) {
    into[i] = airC[i] + Math.max(0, poa[i]) / (u0 + u1 * Math.max(0, windMS[i]));
  }
  return into;
}
