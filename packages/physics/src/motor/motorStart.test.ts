import { expect, test } from 'vitest';
import { lockedRotor, motorStart, softStartTorqueShare } from './motorStart.ts';

test('start kVA: 1 hp code K 9.0, ¾ hp code J 6.0, 58 A at 240 V 13.9 (NEC 430.7(B), by hand)', () => {
  expect(lockedRotor({ codeLetter: 'K', horsepower: 1, ratedV: 230, phases: 1 }).startKva).toBeCloseTo(8.99, 10);
  expect(lockedRotor({ codeLetter: 'j', horsepower: 0.75, ratedV: 230, phases: 1 }).startKva).toBeCloseTo(5.9925, 10);
  const compressor = lockedRotor({ lockedRotorA: 58, ratedV: 240, phases: 1 });
  expect(compressor.startKva).toBeCloseTo(13.92, 10);
  expect(compressor.by).toBe('nameplate');
  // √3 · 400 V · 30 A
  expect(lockedRotor({ lockedRotorA: 30, ratedV: 400, phases: 3 }).startKva).toBeCloseTo(20.785, 3);
});

test('a 58 A compressor on 39 A with 2 A of base load: k 0.64, ask', () => {
  const got = motorStart({ lockedRotorA: 58, sourceLimitA: 39, baseLoadA: 2, kind: 'compressor' });
  expect(got.k).toBeCloseTo(0.638, 3);
  expect(got).toMatchObject({ verdict: 'ask', peakA: 39, startedPercent: 75 });
});

test('a 30 A pump: starts on 39 A, asks on 20 A less 2 A, will not on 11 A', () => {
  const pump = { lockedRotorA: 30, kind: 'pump' } as const;
  expect(motorStart({ ...pump, sourceLimitA: 39 })).toMatchObject({
    verdict: 'starts',
    peakA: 30,
    startedPercent: 100,
  });
  expect(motorStart({ ...pump, sourceLimitA: 20, baseLoadA: 2 })).toMatchObject({ verdict: 'ask', startedPercent: 85 });
  expect(motorStart({ ...pump, sourceLimitA: 11 }).verdict).toBe('will not');
  expect(motorStart({ ...pump, sourceLimitA: 24 }).verdict).toBe('starts');
  expect(motorStart({ ...pump, sourceLimitA: 12 }).verdict).toBe('ask');
  // the base load eats it all
  expect(motorStart({ ...pump, sourceLimitA: 20, baseLoadA: 25 })).toMatchObject({ k: 0, verdict: 'will not' });
});

test('a soft starter at 3 of 6 times leaves a quarter of the torque', () => {
  expect(softStartTorqueShare(3, 6)).toBe(0.25);
});

test('refuses to guess from running watts', () => {
  expect(() => lockedRotor({ ratedV: 230, phases: 1 })).toThrow('running watts are not enough');
  expect(() => lockedRotor({ codeLetter: 'K', ratedV: 230, phases: 1 })).toThrow('Read the nameplate');
  expect(() => motorStart({ lockedRotorA: 0, sourceLimitA: 20 })).toThrow('lockedRotorA is 0');
});
