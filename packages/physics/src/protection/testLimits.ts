import { positive, Refusal, within } from '../refusal.ts';
import { type BreakerType, breakerNamed, type LoopStandard, loopLimitOhm } from './faultLoop.ts';

export type TestVerdict = 'pass' | 'fail' | 'invalid test voltage';

export interface InsulationLimit {
  readonly requiredTestVoltageV: number;
  readonly minimumMohm: number;
  readonly verdict: TestVerdict;
}

function insulationVerdict(
  requiredV: number,
  minimumMohm: number,
  testV: number,
  readingMohm: number,
): InsulationLimit {
  within(readingMohm, 0, Number.MAX_VALUE, 'readingMohm', 'Write the reading; above range, the end of the range.');
  positive(testV, 'testVoltageV', 'Write the test voltage.');
  const verdict = testV < requiredV ? 'invalid test voltage' : readingMohm >= minimumMohm ? 'pass' : 'fail';
  return { requiredTestVoltageV: requiredV, minimumMohm, verdict };
}

/**
 * Insulation resistance of a circuit: SELV and PELV 250 V and 0.5 MΩ, to 500 V 500 V and 1 MΩ, above 1000 V and 1 MΩ.
 * Where surge devices or electronics cannot be disconnected, 250 V with the same 1 MΩ.
 *
 * @param circuit  `SELV`, `PELV`, or the nominal voltage such as `230 V`.
 *
 * Source: IEC 60364-6:2016 Table 6.1 (500 V, 1 MΩ and the SELV row seen; the rest from memory).
 */
export function insulationTest(input: {
  readonly circuit: string;
  readonly testVoltageV: number;
  readonly surgeDevicesDisconnected?: boolean;
  readonly readingMohm: number;
}): InsulationLimit {
  const { testVoltageV, readingMohm, surgeDevicesDisconnected = true } = input;
  if (/^[SP]ELV$/i.test(input.circuit)) return insulationVerdict(250, 0.5, testVoltageV, readingMohm);
  const nominalV = Number.parseFloat(input.circuit);
  if (!(nominalV > 0)) {
    throw new Refusal({
      code: 'unknown-name',
      at: 'circuit',
      got: input.circuit,
      want: 'SELV, PELV or a voltage such as 230 V',
      mend: 'Name the circuit by its nominal voltage.',
    });
  }
  if (nominalV > 500) return insulationVerdict(1000, 1, testVoltageV, readingMohm);
  return insulationVerdict(surgeDevicesDisconnected ? 500 : 250, 1, testVoltageV, readingMohm);
}

/**
 * Insulation of the d.c. side, by system voltage 1.25·Voc·n: below 120 V 250 V and 0.5 MΩ, to 500 V 500 V and 1 MΩ,
 * to 1000 V 1000 V and 1 MΩ, above 1500 V and 1 MΩ. Source: IEC 62446-1 Table 2 (from memory), to 10 kWp.
 */
export function pvInsulationTest(input: {
  readonly vocStcV: number;
  readonly modulesInSeries: number;
  readonly testVoltageV: number;
  readonly readingMohm: number;
}): InsulationLimit & { readonly systemVoltageV: number } {
  const vocV = positive(input.vocStcV, 'vocStcV', 'Read it from the module sheet.');
  const systemVoltageV = vocV * positive(input.modulesInSeries, 'modulesInSeries', 'Count them.') * 1.25;
  const [requiredV, minimumMohm] = pvInsulationRow(systemVoltageV);
  return { systemVoltageV, ...insulationVerdict(requiredV, minimumMohm, input.testVoltageV, input.readingMohm) };
}

function pvInsulationRow(systemV: number): readonly [number, number] {
  if (systemV < 120) return [250, 0.5];
  if (systemV <= 500) return [500, 1];
  return [systemV <= 1000 ? 1000 : 1500, 1];
}

/** Trip times, ms, by multiple of the rated residual current. */
const RCD_MS = {
  general: { 1: [0, 300], 2: [0, 150], 5: [0, 40] },
  selective_S: { 1: [130, 500], 2: [60, 200], 5: [50, 150] },
} as const;

export type RcdKind = keyof typeof RCD_MS;

/**
 * RCD trip time: none at half the rated current, within the band at 1, 2 and 5 times.
 *
 * @param tripMs  null or undefined: it did not trip.
 *
 * Source: IEC 61008-1, IEC 61009-1 (twice the rated current for type S, and its lower bounds, from memory).
 */
export function rcdTest(input: {
  readonly rcd: RcdKind;
  readonly multipleOfRated: number;
  readonly tripMs?: number | null;
}): { limitMs: readonly [number, number] | 'no trip'; verdict: 'pass' | 'fail' } {
  const { rcd, multipleOfRated, tripMs } = input;
  const tripped = tripMs !== null && tripMs !== undefined;
  if (tripped) within(tripMs, 0, 1e5, 'tripMs', 'Write the trip time in ms, or nothing if it did not trip.');
  if (multipleOfRated === 0.5) return { limitMs: 'no trip', verdict: tripped ? 'fail' : 'pass' };
  const band: readonly [number, number] | undefined = (RCD_MS[rcd] as Record<number, readonly [number, number]>)?.[
    multipleOfRated
  ];
  if (!band) {
    throw new Refusal({
      code: 'unknown-name',
      at: 'multipleOfRated',
      got: `${multipleOfRated} × for ${rcd}`,
      want: '0.5, 1, 2 or 5; general or selective_S',
      mend: 'Test at one of the standard multiples.',
    });
  }
  const pass = tripped && tripMs >= band[0] && tripMs <= band[1];
  return { limitMs: band, verdict: pass ? 'pass' : 'fail' };
}

/** Earthing and bonding continuity: not above 0.5 Ω (AS/NZS 3000 8.3.5, from memory) unless another limit is given. */
export function earthContinuityTest(input: { readonly readingOhm: number; readonly maximumOhm?: number }): {
  maximumOhm: number;
  verdict: 'pass' | 'fail';
} {
  const maximumOhm = positive(input.maximumOhm ?? 0.5, 'maximumOhm', 'Give the limit.');
  const readingOhm = within(input.readingOhm, 0, Number.MAX_VALUE, 'readingOhm', 'Subtract the leads.');
  return { maximumOhm, verdict: readingOhm <= maximumOhm ? 'pass' : 'fail' };
}

/**
 * A measured loop impedance against the breaker's limit. A cold reading by BS 7671 is compared with 80 % of the
 * table, which allows for the conductor getting hot; AS/NZS 3000 compares with the table itself.
 */
export function loopTest(input: {
  readonly standard: LoopStandard;
  readonly breaker: BreakerType | string;
  readonly readingOhm: number;
  readonly measuredCold?: boolean;
}): { tableOhm: number; compareWithOhm: number; verdict: 'pass' | 'fail' } {
  const breaker = typeof input.breaker === 'string' ? breakerNamed(input.breaker) : input.breaker;
  const readingOhm = within(input.readingOhm, 0, Number.MAX_VALUE, 'readingOhm', 'Write the reading.');
  const tableOhm = loopLimitOhm(input.standard, breaker);
  const cold = input.measuredCold ?? true;
  const compareWithOhm = input.standard === 'BS 7671' && cold ? 0.8 * tableOhm : tableOhm;
  return { tableOhm, compareWithOhm, verdict: readingOhm <= compareWithOhm ? 'pass' : 'fail' };
}

/** A continuity reading against what length and size predict; a miss either way means another cable or a joint. */
export function continuityTest(input: {
  readonly r1PlusR2MohmPerM20c: number;
  readonly lengthM: number;
  readonly readingOhm: number;
  readonly tolerancePercent: number;
}): { calculatedOhm: number; verdict: 'pass' | 'fail' } {
  const perM = positive(input.r1PlusR2MohmPerM20c, 'r1PlusR2MohmPerM20c', 'Add both conductors.');
  const calculatedOhm = (perM * positive(input.lengthM, 'lengthM', 'Measure along the cable.')) / 1000;
  const readingOhm = within(input.readingOhm, 0, Number.MAX_VALUE, 'readingOhm', 'Subtract the leads.');
  const tolerance = within(input.tolerancePercent, 0, 100, 'tolerancePercent', 'Per cent of the calculated value.');
  const off = Math.abs(readingOhm - calculatedOhm);
  return { calculatedOhm, verdict: off <= (calculatedOhm * tolerance) / 100 ? 'pass' : 'fail' };
}
