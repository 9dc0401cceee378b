import { positive, Refusal, within } from '../refusal.ts';
import { MAX_LOOP_OHM } from './data/tables.ts';

export type BreakerCurve = 'B' | 'C' | 'D';
export type LoopStandard = 'BS 7671' | 'AS/NZS 3000';

export interface BreakerType {
  readonly curve: BreakerCurve;
  readonly ratingA: number;
}

/** Reads `type C 20 A`, `C20` or `B 16`. */
export function breakerNamed(name: string): BreakerType {
  const found = /^(?:type\s*)?([BCD])\s*(\d+(?:\.\d+)?)\s*A?$/i.exec(name.trim());
  if (!found) {
    throw new Refusal({
      code: 'unknown-name',
      at: 'breaker',
      got: name,
      want: 'a curve and a rating, such as C20',
      mend: 'Read both from the front of the breaker.',
    });
  }
  return { curve: (found[1] as string).toUpperCase() as BreakerCurve, ratingA: Number(found[2]) };
}

/** Times the rating at which the breaker is taken to trip at once: BS upper edge of the band, AS/NZS its mean. */
const TRIP_MULTIPLE: Readonly<Record<LoopStandard, Readonly<Record<BreakerCurve, number>>>> = {
  'BS 7671': { B: 5, C: 10, D: 20 },
  'AS/NZS 3000': { B: 4, C: 7.5, D: 12.5 },
};
/** Lowest voltage factor: BS 7671 Cmin 0.95; AS/NZS 3000 uses the nominal. */
const VOLTAGE_FACTOR: Readonly<Record<LoopStandard, number>> = { 'BS 7671': 0.95, 'AS/NZS 3000': 1 };

function known(standard: LoopStandard, curve: BreakerCurve): void {
  if (TRIP_MULTIPLE[standard]?.[curve] === undefined) {
    throw new Refusal({
      code: 'unknown-name',
      at: 'breaker',
      got: `${standard} type ${curve}`,
      want: 'BS 7671 or AS/NZS 3000, type B, C or D',
      mend: 'Name the standard and the curve.',
    });
  }
}

/** Largest loop impedance by the formula, Ω: c·U0 / (multiple·In), for ratings the table leaves out. */
export function loopLimitByFormulaOhm(standard: LoopStandard, breaker: BreakerType, u0V = 230): number {
  known(standard, breaker.curve);
  const ratingA = positive(breaker.ratingA, 'breaker.ratingA', 'Read it from the breaker.');
  const volts = VOLTAGE_FACTOR[standard] * positive(u0V, 'u0V', 'Give the voltage to earth.');
  return volts / (TRIP_MULTIPLE[standard][breaker.curve] * ratingA);
}

/**
 * Largest earth-fault loop impedance for 0.4 s at 230 V, Ω: the printed table where it has the rating, else the
 * formula. Both are for the conductor hot. Source: BS 7671:2018 Table 41.3; AS/NZS 3000:2018 Table 8.1 (from memory).
 */
export function loopLimitOhm(standard: LoopStandard, breaker: BreakerType): number {
  known(standard, breaker.curve);
  const row = MAX_LOOP_OHM[standard][breaker.curve].find(([a]) => a === breaker.ratingA);
  return row ? row[1] : loopLimitByFormulaOhm(standard, breaker);
}

export interface FaultLoopInput {
  readonly standard: LoopStandard;
  readonly breaker: BreakerType | string;
  /** Loop outside the installation, measured or declared. */
  readonly zeOhm: number;
  /** Line and protective conductor together at 20 °C. */
  readonly r1PlusR2MohmPerM20c: number;
  readonly lengthM: number;
  /** Cold to hot: 1.20 for 70 °C PVC in a cable. Default 1.2. */
  readonly temperatureFactor?: number;
  /** Default 230 V. */
  readonly u0V?: number;
}

export interface FaultLoop {
  readonly r1PlusR2ColdOhm: number;
  /** What a meter should read with the cable cold. */
  readonly zsColdOhm: number;
  readonly zsOhm: number;
  readonly tableMaxOhm: number;
  readonly pass: boolean;
  /** U0/Zs with the conductor hot, A. */
  readonly faultCurrentA: number;
}

/**
 * Earth-fault loop of a circuit, cold and hot, against the breaker's limit.
 *
 *     Zs = Ze + factor·(r1 + r2)·L        If = U0/Zs
 *
 * Resistances are added as numbers, which errs on the high side where the network has reactance.
 */
export function faultLoop(input: FaultLoopInput): FaultLoop {
  const breaker = typeof input.breaker === 'string' ? breakerNamed(input.breaker) : input.breaker;
  const zeOhm = within(input.zeOhm, 0, 1e4, 'zeOhm', 'Measure it, or take the declared maximum.');
  const perM = positive(input.r1PlusR2MohmPerM20c, 'r1PlusR2MohmPerM20c', 'Add line and earth conductor.');
  const lengthM = positive(input.lengthM, 'lengthM', 'Measure along the cable.');
  const factor = within(input.temperatureFactor ?? 1.2, 1, 2, 'temperatureFactor', '1.20 for PVC in a cable.');
  const u0V = positive(input.u0V ?? 230, 'u0V', 'Give the voltage to earth.');

  const r1PlusR2ColdOhm = (perM * lengthM) / 1000;
  const zsOhm = zeOhm + factor * r1PlusR2ColdOhm;
  const tableMaxOhm = loopLimitOhm(input.standard, breaker);
  return {
    r1PlusR2ColdOhm,
    zsColdOhm: zeOhm + r1PlusR2ColdOhm,
    zsOhm,
    tableMaxOhm,
    pass: zsOhm <= tableMaxOhm,
    faultCurrentA: u0V / zsOhm,
  };
}

/** Prospective current of a loop, A: volts over ohms. A three-phase fault is about double the single-phase one. */
export function prospectiveCurrentA(volts: number, loopOhm: number): number {
  return positive(volts, 'volts', 'Give the voltage.') / positive(loopOhm, 'loopOhm', 'Measure the loop.');
}

/** Largest electrode resistance of a TT supply behind an RCD, Ω: 50 V over IΔn, and 200 Ω for a stable rod. */
export function electrodeLimitOhm(ratedResidualA: number): { byTouchVoltageOhm: number; stableOhm: number } {
  const a = positive(ratedResidualA, 'ratedResidualA', 'Read IΔn from the RCD, in ampere.');
  return { byTouchVoltageOhm: 50 / a, stableOhm: 200 };
}

/** Disconnection time, s. Source: IEC 60364-4-41 Table 41.1 (0.4 s TN and 0.2 s TT seen; the rest from memory). */
export function disconnectionTimeS(earthing: 'TN' | 'TT', u0V: number, circuit: 'final' | 'distribution'): number {
  within(u0V, 50.000001, 1000, 'u0V', 'Up to 50 V other rules hold.');
  if (circuit === 'distribution') return earthing === 'TN' ? 5 : 1;
  const band = u0V <= 120 ? 0 : u0V <= 230 ? 1 : u0V <= 400 ? 2 : 3;
  return (earthing === 'TN' ? [0.8, 0.4, 0.2, 0.1] : [0.3, 0.2, 0.07, 0.04])[band];
}

export interface IslandFaultInput {
  readonly breaker: BreakerType | string;
  /** What the battery inverter can push into a fault, A r.m.s. */
  readonly sourceFaultA: number;
  /** Loop from the source to the fault. Left out: the source is the limit. */
  readonly loopOhm?: number;
  readonly u0V?: number;
}

export interface IslandFault {
  readonly faultA: number;
  /** Magnetic band of the breaker: below the first it cannot trip at once, above the second it must. */
  readonly magneticFromA: number;
  readonly magneticToA: number;
  readonly magneticTrip: 'trips' | 'may' | 'will not';
}

const MAGNETIC: Readonly<Record<BreakerCurve, readonly [number, number]>> = { B: [3, 5], C: [5, 10], D: [10, 20] };

/**
 * Does a breaker trip at once on a fault in island, where the battery inverter is the only source?
 * Mostly not: then disconnection rests on the RCD and on the inverter shutting itself down.
 * Bands of IEC 60898-1: B 3–5, C 5–10, D 10–20 times the rating (from memory).
 */
export function islandFault(input: IslandFaultInput): IslandFault {
  const { curve, ratingA } = typeof input.breaker === 'string' ? breakerNamed(input.breaker) : input.breaker;
  const source = positive(input.sourceFaultA, 'sourceFaultA', 'Read it from the inverter sheet.');
  const byLoop = input.loopOhm === undefined ? source : prospectiveCurrentA(input.u0V ?? 230, input.loopOhm);
  const faultA = Math.min(source, byLoop);
  const magneticFromA = MAGNETIC[curve][0] * ratingA;
  const magneticToA = MAGNETIC[curve][1] * ratingA;
  const magneticTrip = faultA >= magneticToA ? 'trips' : faultA < magneticFromA ? 'will not' : 'may';
  return { faultA, magneticFromA, magneticToA, magneticTrip };
}
