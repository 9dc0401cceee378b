import { positive, within } from '../refusal.ts';

/** Light on the plane and air about it, common to all models. */
export interface CellAir {
  /** Plane-of-array irradiance, W/m². */
  readonly poa: number;
  readonly airC: number;
}

/** Refuses light and air without meaning. */
function checkAir({ poa, airC }: CellAir): void {
  within(poa, 0, 3000, 'poa', 'Give W/m² on the plane, not below 0.');
  within(airC, -90, 70, 'airC', 'Give degrees Celsius.');
}

const wind = (windMS: number): number => within(windMS, 0, 100, 'windMS', 'Give m/s.');

export interface FaimanInput extends CellAir {
  readonly windMS: number;
  /** Heat loss without wind, W/m²K. Default 25, open rack. */
  readonly u0?: number;
  /** Heat loss by wind, W/m²K per m/s. Default 6.84, open rack. */
  readonly u1?: number;
}

/**
 * Module temperature from two measured loss coefficients, °C: air + poa/(u0 + u1·wind).
 *
 * @throws {Refusal} `outside-range`, `not-positive`.
 *
 * The defaults are an open rack with wind at module height. Close to a roof u0 is 15 to 20 and u1 near 0
 * (common practice, no source). Source: Faiman 2008, Progress in Photovoltaics 16(4), 307.
 */
export function cellTemperatureFaiman2008(input: FaimanInput): number {
  checkAir(input);
  const u0 = positive(input.u0 ?? 25, 'u0', 'W/m²K, 25 on an open rack.');
  const u1 = within(input.u1 ?? 6.84, 0, 100, 'u1', 'W/m²K per m/s, 6.84 on an open rack.');
  return input.airC + input.poa / (u0 + u1 * wind(input.windMS));
}

export interface NoctInput extends CellAir {
  /** Nominal operating cell temperature of the sheet, °C (800 W/m², 20 °C, 1 m/s). */
  readonly noctC: number;
}

const noct = (noctC: number): number => within(noctC, 20, 100, 'noctC', 'The sheet says 42 to 48 °C.');

/**
 * Cell temperature by the standard rule of the data sheet, °C: air + (noct − 20)/800 · poa.
 *
 * Knows no wind. @throws {Refusal} `outside-range`. Source: after Ross 1980, 14th IEEE PVSC.
 */
export function cellTemperatureNoct(input: NoctInput): number {
  checkAir(input);
  return input.airC + ((noct(input.noctC) - 20) / 800) * input.poa;
}

export interface RossInput extends CellAir {
  /** Rise per light, K·m²/W: 0.02 free standing to 0.05 on an unventilated roof. */
  readonly kKM2PerW: number;
}

/** Cell temperature by one coefficient, °C: air + k·poa. @throws {Refusal} `outside-range`. Source: Ross 1980. */
export function cellTemperatureRoss1980(input: RossInput): number {
  checkAir(input);
  return input.airC + within(input.kKM2PerW, 0, 0.2, 'kKM2PerW', 'Between 0.02 and 0.05 K·m²/W.') * input.poa;
}

export interface NoctBalanceInput extends NoctInput {
  readonly windMS: number;
  /** Share of the light that leaves as electricity, 0…1. */
  readonly moduleEfficiency: number;
  /** Transmittance × absorptance. Default 0.9. */
  readonly tauAlpha?: number;
}

/**
 * Cell temperature from the energy balance at the nominal point, °C:
 *
 *     air + poa/800 · (noct − 20) · (1 − η/τα) · 9.5/(5.7 + 3.8·wind)
 *
 * @throws {Refusal} `outside-range`. Source: Duffie and Beckman, Solar Engineering of Thermal Processes, ch. 23.
 */
export function cellTemperatureNoctBalance(input: NoctBalanceInput): number {
  checkAir(input);
  const tauAlpha = within(input.tauAlpha ?? 0.9, 0.1, 1, 'tauAlpha', 'Usually 0.9.');
  const efficiency = within(input.moduleEfficiency, 0, tauAlpha, 'moduleEfficiency', 'A share: 0.21.');
  const cooling = 9.5 / (5.7 + 3.8 * wind(input.windMS));
  return input.airC + (input.poa / 800) * (noct(input.noctC) - 20) * (1 - efficiency / tauAlpha) * cooling;
}

/** Coefficients of a mounting: back = air + poa·exp(a + b·wind), cell = back + poa/1000·deltaTC. */
export interface SandiaMounting {
  readonly a: number;
  /** s/m. */
  readonly b: number;
  /** Cell above back at 1000 W/m², K. */
  readonly deltaTC: number;
}

/** The four usual mountings, wind at 10 m. Source: King, Boyson and Kratochvil 2004, SAND2004-3535, table 1. */
export const sandiaMountings = {
  'glass-glass-open-rack': { a: -3.47, b: -0.0594, deltaTC: 3 },
  'glass-glass-close-roof': { a: -2.98, b: -0.0471, deltaTC: 1 },
  'glass-polymer-open-rack': { a: -3.56, b: -0.075, deltaTC: 3 },
  'glass-polymer-insulated-back': { a: -2.81, b: -0.0455, deltaTC: 0 },
} as const satisfies Record<string, SandiaMounting>;

export interface SandiaInput extends CellAir, SandiaMounting {
  readonly windMS: number;
}

/**
 * Back and cell temperature by mounting, °C.
 *
 * @throws {Refusal} `outside-range`. Source: King, Boyson and Kratochvil 2004, SAND2004-3535.
 */
export function cellTemperatureSandia2004(input: SandiaInput): {
  readonly cellC: number;
  readonly moduleBackC: number;
} {
  checkAir(input);
  within(input.a, -10, 0, 'a', 'Take a row of the four mountings.');
  within(input.b, -1, 0, 'b', 'Take a row of the four mountings.');
  within(input.deltaTC, 0, 20, 'deltaTC', 'Take a row of the four mountings.');
  const moduleBackC = input.airC + input.poa * Math.exp(input.a + input.b * wind(input.windMS));
  return { cellC: moduleBackC + (input.poa / 1000) * input.deltaTC, moduleBackC };
}
