import { expect, test } from 'vitest';
import { adiabatic, adiabaticK, kFromTemperatures } from './adiabatic.ts';
import { ADIABATIC_K, MAX_LOOP_OHM } from './data/tables.ts';
import {
  type BreakerCurve,
  breakerNamed,
  disconnectionTimeS,
  electrodeLimitOhm,
  faultLoop,
  islandFault,
  type LoopStandard,
  loopLimitByFormulaOhm,
  loopLimitOhm,
  prospectiveCurrentA,
} from './faultLoop.ts';

test('every printed limit is the formula to its rounding, 0.005 Ω', () => {
  let seen = 0;
  for (const standard of ['BS 7671', 'AS/NZS 3000'] as LoopStandard[]) {
    for (const curve of ['B', 'C', 'D'] as BreakerCurve[]) {
      for (const [ratingA, ohm] of MAX_LOOP_OHM[standard][curve]) {
        expect(Math.abs(loopLimitByFormulaOhm(standard, { curve, ratingA }) - ohm)).toBeLessThan(0.0051);
        seen++;
      }
    }
  }
  expect(seen).toBe(69);
});

test('published limits: B16 2.73 Ω (BS 7671 Table 41.3); C20 1.53 Ω (AS/NZS 3000 Table 8.1, from memory)', () => {
  expect(loopLimitOhm('BS 7671', breakerNamed('B16'))).toBe(2.73);
  expect(loopLimitOhm('AS/NZS 3000', breakerNamed('type C 20 A'))).toBe(1.53);
  // not in the table: 0.95 · 230 / (10 · 13)
  expect(loopLimitOhm('BS 7671', breakerNamed('C13'))).toBeCloseTo(1.6808, 4);
});

test('C20, 25 m of 2.5/1.5 mm² behind 0.35 Ω: cold, hot, fault current and protective conductor', () => {
  // R1+R2 = 19.51 mΩ/m · 25 m = 0.48775 Ω; Zs = 0.35 + 1.2 · 0.48775 = 0.9353 Ω; 230/0.9353 = 245.9 A
  const got = faultLoop({
    standard: 'BS 7671',
    breaker: 'type C 20 A',
    zeOhm: 0.35,
    r1PlusR2MohmPerM20c: 19.51,
    lengthM: 25,
  });
  expect(got.zsColdOhm).toBeCloseTo(0.83775, 8);
  expect(got.zsOhm).toBeCloseTo(0.9353, 8);
  expect(got).toMatchObject({ tableMaxOhm: 1.09, pass: true });
  expect(got.faultCurrentA).toBeCloseTo(245.91, 2);
  expect(adiabatic({ faultCurrentA: got.faultCurrentA, timeS: 0.1, k: 115 }).minimumMm2).toBeCloseTo(0.67621, 5);
});

test('the same cable over 40 m behind 0.6 Ω: 1.53648 Ω against 1.53 Ω fails, unrounded', () => {
  const got = faultLoop({
    standard: 'AS/NZS 3000',
    breaker: 'C20',
    zeOhm: 0.6,
    r1PlusR2MohmPerM20c: 19.51,
    lengthM: 40,
  });
  expect(got.zsOhm).toBeCloseTo(1.53648, 8);
  expect(got.pass).toBe(false);
});

test('3000 A for 0.4 s at k 115 needs 16.5 mm², so 25 mm² (calcdomain.com)', () => {
  const got = adiabatic({ faultCurrentA: 3000, timeS: 0.4, k: 115 });
  expect(got.minimumMm2).toBeCloseTo(16.4988, 4);
  expect(got.nextStandardMm2).toBe(25);
});

test('each tabulated k is the adiabatic formula to within 1', () => {
  expect(ADIABATIC_K).toHaveLength(11);
  for (const [metal, covering, fromC, toC, k] of ADIABATIC_K) {
    expect(Math.abs(kFromTemperatures(metal, fromC, toC) - k)).toBeLessThan(1);
    expect(adiabaticK(metal, covering)).toBe(k);
  }
});

test('island: 40 A from a 4.6 kVA inverter cannot trip a B16 at once (48 to 80 A)', () => {
  expect(islandFault({ breaker: 'B16', sourceFaultA: 40 })).toEqual({
    faultA: 40,
    magneticFromA: 48,
    magneticToA: 80,
    magneticTrip: 'will not',
  });
  expect(islandFault({ breaker: 'B6', sourceFaultA: 25 }).magneticTrip).toBe('may');
  // 230 V / 4 Ω = 57.5 A is less than the 90 A the source has
  expect(islandFault({ breaker: 'B10', sourceFaultA: 90, loopOhm: 4 })).toMatchObject({
    faultA: 57.5,
    magneticTrip: 'trips',
  });
});

test('small sums: prospective current, electrode, disconnection time', () => {
  expect(prospectiveCurrentA(230, 0.35)).toBeCloseTo(657.14, 2);
  expect(electrodeLimitOhm(0.03).byTouchVoltageOhm).toBeCloseTo(1666.67, 2);
  expect(disconnectionTimeS('TN', 230, 'final')).toBe(0.4);
  expect(disconnectionTimeS('TT', 230, 'final')).toBe(0.2);
  expect(disconnectionTimeS('TN', 230, 'distribution')).toBe(5);
});

test('refuses what has no meaning', () => {
  expect(() => breakerNamed('20 A')).toThrow('Read both from the front of the breaker');
  expect(() => adiabatic({ faultCurrentA: 6000, timeS: 0.02, k: 115 })).toThrow('let-through energy');
  expect(() => adiabaticK('copper', 'paper')).toThrow('copper, paper');
  expect(() => disconnectionTimeS('TN', 48, 'final')).toThrow('u0V is 48');
  expect(() => loopLimitOhm('BS 7671', { curve: 'K' as never, ratingA: 16 })).toThrow('type K');
});
