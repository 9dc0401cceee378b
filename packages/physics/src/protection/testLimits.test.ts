import { expect, test } from 'vitest';
import {
  continuityTest,
  earthContinuityTest,
  insulationTest,
  loopTest,
  pvInsulationTest,
  rcdTest,
} from './testLimits.ts';

test.each([
  // circuit, test V, surge devices off, MΩ → required V, least MΩ, verdict (IEC 60364-6:2016 Table 6.1)
  ['230 V', 500, true, 240, 500, 1, 'pass'],
  ['230 V', 500, true, 0.82, 500, 1, 'fail'],
  ['400 V', 250, true, 55, 500, 1, 'invalid test voltage'],
  ['230 V', 250, false, 55, 250, 1, 'pass'],
  ['SELV', 250, true, 0.6, 250, 0.5, 'pass'],
] as const)(
  'insulation of %s at %i V',
  (circuit, testVoltageV, surgeDevicesDisconnected, readingMohm, requiredTestVoltageV, minimumMohm, verdict) => {
    const got = insulationTest({ circuit, testVoltageV, surgeDevicesDisconnected, readingMohm });
    expect(got).toEqual({ requiredTestVoltageV, minimumMohm, verdict });
  },
);

test.each([
  // IEC 62446-1 Table 2 (from memory): 1.25 · 41.2 = 51.5 V; 1.25 · 12 · 49.6 = 744 V
  [41.2, 1, 250, 1.4, 51.5, 250, 0.5, 'pass'],
  [49.6, 12, 500, 6, 744, 1000, 1, 'invalid test voltage'],
] as const)(
  'd.c. insulation, %f V × %i',
  (vocStcV, modulesInSeries, testVoltageV, readingMohm, systemV, requiredV, mohm, verdict) => {
    const got = pvInsulationTest({ vocStcV, modulesInSeries, testVoltageV, readingMohm });
    expect(got.systemVoltageV).toBeCloseTo(systemV, 10);
    expect(got).toMatchObject({ requiredTestVoltageV: requiredV, minimumMohm: mohm, verdict });
  },
);

test.each([
  // IEC 61008-1 trip times
  ['general', 1, 212, [0, 300], 'pass'],
  ['general', 5, 45, [0, 40], 'fail'],
  ['general', 0.5, null, 'no trip', 'pass'],
  ['general', 0.5, 80, 'no trip', 'fail'],
  ['general', 1, null, [0, 300], 'fail'],
  ['selective_S', 1, 118, [130, 500], 'fail'],
] as const)('RCD %s at %f times: %s ms', (rcd, multipleOfRated, tripMs, limitMs, verdict) => {
  expect(rcdTest({ rcd, multipleOfRated, tripMs })).toEqual({ limitMs, verdict });
});

test('a cold loop reading by BS 7671 is judged at 80 %, by AS/NZS 3000 at the table', () => {
  const c20 = { breaker: 'type C 20 A', readingOhm: 0.9 } as const;
  expect(loopTest({ ...c20, standard: 'BS 7671', measuredCold: true })).toMatchObject({
    tableOhm: 1.09,
    verdict: 'fail',
  });
  expect(loopTest({ ...c20, standard: 'BS 7671', measuredCold: true }).compareWithOhm).toBeCloseTo(0.872, 10);
  expect(loopTest({ ...c20, standard: 'BS 7671', measuredCold: false }).verdict).toBe('pass');
  expect(loopTest({ ...c20, standard: 'AS/NZS 3000', readingOhm: 1.4 })).toMatchObject({
    tableOhm: 1.53,
    verdict: 'pass',
  });
});

test('continuity: 0.5 Ω of earth, and 19.51 mΩ/m over 25 m within 5 %', () => {
  expect(earthContinuityTest({ readingOhm: 0.31 })).toEqual({ maximumOhm: 0.5, verdict: 'pass' });
  expect(earthContinuityTest({ readingOhm: 0.51 }).verdict).toBe('fail');
  const cable = { r1PlusR2MohmPerM20c: 19.51, lengthM: 25, tolerancePercent: 5 };
  const good = continuityTest({ ...cable, readingOhm: 0.49 });
  expect(good.calculatedOhm).toBeCloseTo(0.48775, 10);
  expect(good.verdict).toBe('pass');
  // too low is as telling as too high: a shorter or thicker cable than drawn
  expect(continuityTest({ ...cable, readingOhm: 0.3 }).verdict).toBe('fail');
});

test('refuses readings without meaning', () => {
  expect(() => insulationTest({ circuit: 'lights', testVoltageV: 500, readingMohm: 5 })).toThrow('circuit is lights');
  expect(() => insulationTest({ circuit: '230 V', testVoltageV: 500, readingMohm: -1 })).toThrow('readingMohm is -1');
  expect(() => rcdTest({ rcd: 'general', multipleOfRated: 3, tripMs: 20 })).toThrow('multipleOfRated is 3 ×');
  expect(() => earthContinuityTest({ readingOhm: Number.NaN })).toThrow('readingOhm is NaN');
});
