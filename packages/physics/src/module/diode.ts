import { positive, within } from '../refusal.ts';

/** Reference temperature, K. */
export const REFERENCE_K = 298.15;
/** Boltzmann's constant, eV/K: also volts per kelvin for one elementary charge. */
export const BOLTZMANN_EV_PER_K = 8.617333262e-5;
const GAP_EV = 1.121;
const GAP_PER_K = 0.0002677;

/** The five parameters of a module at 1000 W/m² and 25 °C, and how its current grows with warmth. */
export interface ModuleModel {
  /** Light current IL, A. */
  readonly photoCurrentA: number;
  /** Diode saturation current Io, A. */
  readonly saturationCurrentA: number;
  /** Series resistance Rs, Ω. */
  readonly seriesOhm: number;
  /** Shunt conductance 1/Rsh, S; 0 for none. */
  readonly shuntSiemens: number;
  /** Modified ideality a = n·Ns·kT/q, V. */
  readonly idealityV: number;
  /** Short-circuit current against temperature, A/K. */
  readonly alphaIscAPerK: number;
}

/** The five parameters at one light and temperature: I = IL + Io − exp(v/a + ln Io) − v·G with v = V + I·Rs. */
export interface DiodeState {
  photoA: number;
  saturationA: number;
  /** ln Io, kept apart so that nothing overflows. */
  logSaturation: number;
  idealityV: number;
  seriesOhm: number;
  shuntSiemens: number;
}

/** Gap energy at a temperature, eV. */
const gapEv = (kelvin: number): number => GAP_EV * (1 - GAP_PER_K * (kelvin - REFERENCE_K));

/** ln of the factor by which Io grows from 25 °C to a temperature: 3 ln(T/T0) + Eg0/kT0 − Eg/kT. */
export function saturationGrowth(kelvin: number): number {
  return 3 * Math.log(kelvin / REFERENCE_K) + (GAP_EV / REFERENCE_K - gapEv(kelvin) / kelvin) / BOLTZMANN_EV_PER_K;
}

/** Refuses a model that is no module. */
export function checkModuleModel(model: ModuleModel): void {
  positive(model.photoCurrentA, 'photoCurrentA', 'Fit the module from its sheet.');
  positive(model.saturationCurrentA, 'saturationCurrentA', 'Fit the module from its sheet.');
  within(model.seriesOhm, 0, 1000, 'seriesOhm', 'Fit the module from its sheet.');
  within(model.shuntSiemens, 0, 1000, 'shuntSiemens', 'Give 1/Rsh, 0 for no shunt.');
  positive(model.idealityV, 'idealityV', 'Fit the module from its sheet.');
  within(model.alphaIscAPerK, -1, 1, 'alphaIscAPerK', 'Give amperes per kelvin, not percent.');
}

/**
 * A module under a light and at a temperature.
 *
 *     IL = S/1000 (IL0 + α(T − T0));  G = G0·S/1000;  a = a0·T/T0;  Io = Io0 (T/T0)³ exp(Eg0/kT0 − Eg/kT)
 *     Eg = 1.121 eV (1 − 0.0002677 (T − T0))
 *
 * @param irradiance  Effective, W/m².
 * @param into  Written and returned, so that a loop allocates nothing.
 * @throws {Refusal} `outside-range`.
 *
 * No spectral factor. Source: De Soto, Klein and Beckman 2006, Solar Energy 80(1), 78.
 */
export function moduleAt(
  model: ModuleModel,
  irradiance: number,
  cellC: number,
  into: DiodeState = blankDiodeState(),
): DiodeState {
  within(irradiance, 0, 5000, 'irradiance', 'Give W/m², not below 0.');
  within(cellC, -100, 200, 'cellC', 'Give degrees Celsius.');
  const kelvin = cellC + 273.15;
  const sun = irradiance / 1000;
  into.photoA = Math.max(0, sun * (model.photoCurrentA + model.alphaIscAPerK * (kelvin - REFERENCE_K)));
  into.logSaturation = Math.log(model.saturationCurrentA) + saturationGrowth(kelvin);
  into.saturationA = Math.exp(into.logSaturation);
  into.idealityV = (model.idealityV * kelvin) / REFERENCE_K;
  into.seriesOhm = model.seriesOhm;
  into.shuntSiemens = model.shuntSiemens * sun;
  return into;
}

/** An empty state for `moduleAt` to write into. */
export function blankDiodeState(): DiodeState {
  return { photoA: 0, saturationA: 0, logSaturation: 0, idealityV: 1, seriesOhm: 0, shuntSiemens: 0 };
}
