import { finite, positive, Refusal, within } from '../refusal.ts';
import { ALPHA_20_PER_K, IEC_60228_OHM_PER_KM_20C, IEC_60228_SIZES_MM2 } from './data/iec60228.ts';
import { type AwgSize, NEC_ALPHA_75_PER_K, NEC_TABLE_8, NEC_TABLE_9, type NecTable9Row } from './data/necChapter9.ts';

export type Metal = 'copper' | 'aluminium';

/** International feet to the kilometre: Ω per 1000 ft times this is Ω/km. */
export const KFT_PER_KM = 1 / 0.3048;

/** A conductor by IEC 60228: class 1 solid, 2 stranded, 5 flexible. */
export interface IecConductor {
  readonly standard: 'IEC 60228';
  readonly class: 1 | 2 | 5;
  readonly material: Metal;
  /** Tinned or otherwise metal-coated strands. */
  readonly coated?: boolean;
  readonly sizeMm2: number;
}

/** A conductor by NEC Chapter 9 Table 8 (direct current) or, in conduit, Table 9 (60 Hz, copper only). */
export interface NecConductor {
  readonly standard: 'NEC';
  readonly material: Metal;
  readonly awg: string;
  readonly stranding?: 'solid' | 'stranded';
  readonly conduit?: 'none' | 'pvc' | 'aluminium' | 'steel';
}

export type Conductor = IecConductor | NecConductor;

function iecColumn(c: IecConductor): readonly (number | undefined)[] | undefined {
  if (c.material === 'aluminium') return c.class === 5 ? undefined : IEC_60228_OHM_PER_KM_20C.class1And2Aluminium;
  if (c.class === 1) return c.coated ? undefined : IEC_60228_OHM_PER_KM_20C.class1CopperPlain;
  if (c.class === 2) {
    return c.coated ? IEC_60228_OHM_PER_KM_20C.class2CopperCoated : IEC_60228_OHM_PER_KM_20C.class2CopperPlain;
  }
  return c.coated ? IEC_60228_OHM_PER_KM_20C.class5CopperCoated : IEC_60228_OHM_PER_KM_20C.class5CopperPlain;
}

/**
 * Largest d.c. resistance of a metric conductor at 20 °C, Ω/km.
 *
 * @throws {Refusal} `unknown-name` for a size, class or coating the table has no figure for.
 *
 * Source: IEC 60228:2004, Tables 1 to 3.
 */
export function iecOhmPerKm20c(conductor: IecConductor): number {
  const column = iecColumn(conductor);
  const found = column?.[(IEC_60228_SIZES_MM2 as readonly number[]).indexOf(conductor.sizeMm2)];
  if (found === undefined) {
    const { class: cls, material, coated, sizeMm2 } = conductor;
    throw new Refusal({
      code: 'unknown-name',
      at: 'conductor',
      got: `${sizeMm2} mm² ${coated ? 'coated ' : ''}${material} class ${cls}`,
      want: `a size of IEC 60228: ${IEC_60228_SIZES_MM2.join(', ')} mm², aluminium from 10 mm² and not class 5`,
      mend: 'Choose a standard size, or give the resistance per kilometre from the maker.',
    });
  }
  return found;
}

function unknownAwg(got: string): Refusal {
  return new Refusal({
    code: 'unknown-name',
    at: 'awg',
    got,
    want: '14 to 1, 1/0 to 4/0 or 250 kcmil, and a material and stranding the table holds',
    mend: 'Choose a size of NEC Chapter 9, or give the resistance per kilometre from the maker.',
  });
}

/** Row of NEC Chapter 9 Table 8: Ω/km, d.c., 75 °C, from Ω per 1000 ft. */
function necTable8OhmPerKm(c: NecConductor): number {
  const stranding = c.stranding ?? 'stranded';
  const row = NEC_TABLE_8.find(([awg, how]) => awg === c.awg && how === stranding);
  if (!row) throw unknownAwg(`${c.awg} ${stranding}`);
  return (c.material === 'copper' ? row[2] : row[3]) * KFT_PER_KM;
}

/** The row of NEC Chapter 9 Table 9 for a size. */
export function necTable9Row(awg: string): NecTable9Row {
  const row = NEC_TABLE_9.find((r) => r.awg === awg);
  if (!row) throw unknownAwg(awg);
  return row;
}

function necTable9OhmPerKm(c: NecConductor): number {
  if (c.material !== 'copper') throw unknownAwg(`${c.awg} ${c.material} in conduit`);
  const { kft } = necTable9Row(c.awg);
  const rPerKft = c.conduit === 'steel' ? kft.rSteel : c.conduit === 'aluminium' ? kft.rAl : kft.rPvc;
  return rPerKft * KFT_PER_KM;
}

/**
 * Resistance per kilometre at the conductor's temperature.
 *
 *     IEC: R(T) = R20·(1 + α20·(T − 20))    α20 0.00393 copper, 0.00403 aluminium
 *     NEC: R(T) = R75·(1 + a·(T − 75))      a 0.00323 copper, 0.00330 aluminium
 *
 * IEC 60228 itself corrects a measured resistance with the rounded 0.004; the design uses 0.00393.
 * The table values are maxima, so a good cable reads a little lower.
 *
 * @param temperatureC  of the conductor, not the air; −60 to 250 °C.
 * @throws {Refusal} `unknown-name`, `outside-range`.
 *
 * Source: IEC 60228:2004; IEC 60287-1-1 (coefficients, from memory); NEC 2023 Chapter 9, Table 8 note 2.
 */
export function ohmPerKm(conductor: Conductor, temperatureC: number): number {
  within(temperatureC, -60, 250, 'conductorTemperatureC', 'Give the temperature of the metal in °C.');
  if (conductor.standard === 'IEC 60228') {
    return iecOhmPerKm20c(conductor) * (1 + ALPHA_20_PER_K[conductor.material] * (temperatureC - 20));
  }
  const inConduit = conductor.conduit !== undefined && conductor.conduit !== 'none';
  const r75 = inConduit ? necTable9OhmPerKm(conductor) : necTable8OhmPerKm(conductor);
  return r75 * (1 + NEC_ALPHA_75_PER_K[conductor.material] * (temperatureC - 75));
}

export type ConductorResistanceInput = Conductor & {
  readonly conductorTemperatureC: number;
  /** One-way length of the route. */
  readonly routeLengthM: number;
  /** 2 for out and back, 1 for a single conductor. Default 1. */
  readonly conductorsInSeries?: number;
};

export interface ConductorResistance {
  readonly ohmPerKmAtTemperature: number;
  readonly resistanceOhm: number;
}

/** Resistance of a run: per kilometre at temperature, and Ω over the route and its conductors in series. */
export function conductorResistance(input: ConductorResistanceInput): ConductorResistance {
  const lengthM = positive(input.routeLengthM, 'routeLengthM', 'Measure along the cable.');
  const inSeries = positive(input.conductorsInSeries ?? 1, 'conductorsInSeries', 'Two for out and back, else one.');
  const ohmPerKmAtTemperature = ohmPerKm(input, input.conductorTemperatureC);
  return { ohmPerKmAtTemperature, resistanceOhm: (ohmPerKmAtTemperature / 1000) * lengthM * inSeries };
}

/**
 * Resistance carried from one temperature to another, for a conductor known by measurement.
 *
 *     R2 = R1·(1 + α20·(T2 − 20))/(1 + α20·(T1 − 20))
 */
export function resistanceAtTemperature(ohm: number, fromC: number, toC: number, material: Metal = 'copper'): number {
  const alpha = ALPHA_20_PER_K[material];
  finite(ohm, 'ohm');
  within(fromC, -60, 250, 'fromC', 'Give the temperature of the metal in °C.');
  within(toC, -60, 250, 'toC', 'Give the temperature of the metal in °C.');
  return (ohm * (1 + alpha * (toC - 20))) / (1 + alpha * (fromC - 20));
}

/** Nearest metric comparison of an American size, mm² (NEC Chapter 9 Table 8 areas, from memory). */
export const AWG_AREA_MM2: Readonly<Record<AwgSize, number>> = {
  '14': 2.08,
  '12': 3.31,
  '10': 5.26,
  '8': 8.37,
  '6': 13.3,
  '4': 21.15,
  '3': 26.67,
  '2': 33.62,
  '1': 42.41,
  '1/0': 53.49,
  '2/0': 67.43,
  '3/0': 85.01,
  '4/0': 107.2,
  '250 kcmil': 127,
};
