import { finite } from '../refusal.ts';
import type { DiodeState } from './diode.ts';

/**
 * Current of a module held at a voltage, A.
 *
 * Solved for the diode voltage v: v − Rs·I(v) − V rises and curves upwards, so Newton's method from the
 * right comes down to the root without overshooting. Negative beyond open circuit: the module consumes.
 *
 * @throws {Refusal} `not-finite`.
 */
export function moduleCurrentAt(state: DiodeState, voltageV: number): number {
  finite(voltageV, 'voltageV', 'Give volts.');
  const { photoA, saturationA, logSaturation, idealityV: a, seriesOhm: rs, shuntSiemens: g } = state;
  const light = photoA + saturationA;
  let v = voltageV + rs * light;
  // far beyond open circuit the diode alone bounds v much closer
  if (rs > 0 && voltageV > 0) v = Math.min(v, a * (Math.log(voltageV / rs + light) - logSaturation));
  for (let turn = 0; turn < 200; turn++) {
    const e = Math.exp(v / a + logSaturation);
    const step = (v - rs * (light - e - v * g) - voltageV) / (1 + rs * (e / a + g));
    v -= step;
    if (Math.abs(step) <= 1e-13 * (1 + Math.abs(v))) break;
  }
  return light - Math.exp(v / a + logSaturation) - v * g;
}

/** Voltage of a module that delivers no current, V; 0 in the dark. */
export function moduleOpenCircuitV(state: DiodeState): number {
  const { photoA, saturationA, logSaturation, idealityV: a, shuntSiemens: g } = state;
  if (!(photoA > 0)) return 0;
  const light = photoA + saturationA;
  let v = a * (Math.log(light) - logSaturation); // without shunt; the root lies left of it
  for (let turn = 0; turn < 100; turn++) {
    const e = Math.exp(v / a + logSaturation);
    const step = (e + v * g - light) / (e / a + g);
    v -= step;
    if (Math.abs(step) <= 1e-13 * (1 + Math.abs(v))) break;
  }
  return v;
}
