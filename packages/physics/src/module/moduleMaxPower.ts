import { Refusal, within } from '../refusal.ts';
import { type DiodeState, type ModuleModel, moduleAt } from './diode.ts';
import { moduleCurrentAt, moduleOpenCircuitV } from './moduleCurrent.ts';

/** Where a module works. */
export interface ModulePoint {
  powerW: number;
  voltageV: number;
  currentA: number;
}

const blankPoint = (): ModulePoint => ({ powerW: 0, voltageV: 0, currentA: 0 });

/**
 * Point of maximum power.
 *
 * Unknown is the diode voltage v: with I(v) = IL + Io − e − vG and V = v − I·Rs the power is stationary
 * where I + I′(v − 2·I·Rs) = 0. Starts from a closed form that knows Rs and takes two Halley steps, one
 * exponential each: 4·10⁻¹⁶ of the power, 1 to 1,400 W/m², −30 to 90 °C.
 *
 * @param into  Written and returned; all zero in the dark.
 *
 * The optimum is flat: voltage and current are good to the root of that.
 */
export function moduleMaxPower(state: DiodeState, into: ModulePoint = blankPoint()): ModulePoint {
  const { photoA, saturationA, logSaturation, idealityV: a, seriesOhm: rs, shuntSiemens: g } = state;
  into.powerW = into.voltageV = into.currentA = 0;
  if (!(photoA > 0)) return into;

  const drop = (1.9 * photoA * rs) / a; // series loss in units of a
  const y = Math.max(1, Math.log(photoA) - logSaturation + 1 - drop);
  let w = y - Math.log(y);
  w = (w * (1 + y - Math.log(w))) / (1 + w); // one Newton step of w + ln w = y
  let v = a * (w - 1 + drop);
  for (let turn = 0; turn < 2; turn++) {
    const e = Math.exp(v / a + logSaturation);
    const i = photoA + saturationA - e - v * g;
    const i1 = -(e / a + g);
    const i2 = -e / (a * a);
    const reach = v - 2 * i * rs;
    const f = i + i1 * reach;
    const f1 = 2 * i1 + i2 * reach - 2 * i1 * i1 * rs;
    const f2 = 3 * i2 - 6 * i1 * i2 * rs + (i2 / a) * reach;
    v -= (2 * f * f1) / (2 * f1 * f1 - f * f2);
  }
  const i = photoA + saturationA - Math.exp(v / a + logSaturation) - v * g;
  const voltageV = v - i * rs;
  if (!(i > 0 && voltageV > 0)) return into; // light too faint for its saturation current
  into.currentA = i;
  into.voltageV = voltageV;
  into.powerW = i * voltageV;
  return into;
}

/**
 * Best point a unit can hold whose input works from `lowV` to `highV` only.
 *
 * Power rises to one maximum and falls, so outside the window the nearer edge is best. Nothing if open
 * circuit stays below the window.
 *
 * @throws {Refusal} `inconsistent`, `outside-range`.
 */
export function modulePowerInWindow(
  state: DiodeState,
  lowV: number,
  highV: number,
): ModulePoint & { readonly held: 'free' | 'low' | 'high' | 'off' } {
  within(lowV, 0, 10_000, 'lowV', 'Give volts, not below 0.');
  if (!(highV > lowV)) {
    const want = `above lowV, ${lowV} V`;
    throw new Refusal({
      code: 'inconsistent',
      at: 'highV',
      got: highV,
      want,
      mend: 'Give the upper edge of the window.',
    });
  }
  const best = moduleMaxPower(state);
  if (best.voltageV >= lowV && best.voltageV <= highV) return { ...best, held: best.powerW > 0 ? 'free' : 'off' };
  const voltageV = best.voltageV < lowV ? lowV : highV;
  if (voltageV === lowV && moduleOpenCircuitV(state) <= lowV) return { ...blankPoint(), held: 'off' };
  const currentA = moduleCurrentAt(state, voltageV);
  return { powerW: voltageV * currentA, voltageV, currentA, held: voltageV === lowV ? 'low' : 'high' };
}

/** The points a curve is known by. */
export interface ModulePoints {
  readonly iSc: number;
  readonly vOc: number;
  readonly iMp: number;
  readonly vMp: number;
  readonly pMp: number;
  readonly iAtHalfVoc: number;
}

/** Short circuit, open circuit, maximum power and the current at half the open-circuit voltage; A, V, W. */
export function modulePoints(model: ModuleModel, irradiance: number, cellC: number): ModulePoints {
  const state = moduleAt(model, irradiance, cellC);
  const vOc = moduleOpenCircuitV(state);
  const best = moduleMaxPower(state);
  return {
    iSc: moduleCurrentAt(state, 0),
    vOc,
    iMp: best.currentA,
    vMp: best.voltageV,
    pMp: best.powerW,
    iAtHalfVoc: moduleCurrentAt(state, vOc / 2),
  };
}

/**
 * Power by the linear model, W: rated · S/1000 · (1 + γ(T − 25)).
 *
 * @param gammaPerK  Power against temperature, 1/K, negative: −0.0035.
 * @throws {Refusal} `outside-range`.
 *
 * Errs high in weak light. Source: the form of Dobos 2014, NREL/TP-6A20-62641.
 */
export function modulePowerLinear2014(ratedW: number, gammaPerK: number, irradiance: number, cellC: number): number {
  within(ratedW, 0, 100_000, 'ratedW', 'Give watts.');
  within(gammaPerK, -0.02, 0.02, 'gammaPerK', 'A share per kelvin: −0.0035, not −0.35.');
  within(irradiance, 0, 5000, 'irradiance', 'Give W/m², not below 0.');
  within(cellC, -100, 200, 'cellC', 'Give degrees Celsius.');
  return Math.max(0, ((ratedW * irradiance) / 1000) * (1 + gammaPerK * (cellC - 25)));
}
