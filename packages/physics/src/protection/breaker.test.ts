import { expect, test } from 'vitest';
import { continuousBreaker, largestRatingA, nextRatingA, unitsPerBranch } from './breaker.ts';
import { necBusbar, sumOfSources } from './busbar.ts';
import { necBranch, necGroundingAwg } from './necBranch.ts';

test('16 units of 1.21 A by the NEC: 19.36 A, times 1.25 is 24.2 A, next rating 25 A', () => {
  const got = continuousBreaker({ moduleInverters: 16, ratedCurrentEachA: 1.21, ratingList: 'NEC 240.6(A)' });
  expect(got.branchCurrentA).toBeCloseTo(19.36, 10);
  expect(got.minimumOcpdA).toBeCloseTo(24.2, 10);
  expect(got.nextStandardA).toBe(25);
});

test('nine units of 1.74 A on a 16 A breaker where the current is taken as continuous: 98 % of it', () => {
  // 16 / 1.74 = 9.2; 9 · 1.74 = 15.66 A
  const got = unitsPerBranch({ ocpdA: 16, ratedCurrentEachA: 1.74, continuousFactor: 1 });
  expect(got.maximumCount).toBe(9);
  expect(got.loadShare).toBeCloseTo(0.979, 3);
});

test('20 A at 125 %: 13 units of 1.21 A, exactly 10 of 1.6 A', () => {
  // 20/1.25 = 16 A; 16/1.21 = 13.2; 16/1.6 = 10, which rounding must not turn into 9
  expect(unitsPerBranch({ ocpdA: 20, ratedCurrentEachA: 1.21 }).maximumCount).toBe(13);
  expect(unitsPerBranch({ ocpdA: 20, ratedCurrentEachA: 1.6 }).maximumCount).toBe(10);
  expect(unitsPerBranch({ ocpdA: 20, ratedCurrentEachA: 1.21, sheetMaximum: 11 }).boundBy).toBe('sheet');
  expect(unitsPerBranch({ ocpdA: 32, ratedCurrentEachA: 1.21, trunkRatingA: 20 })).toMatchObject({
    maximumCount: 16,
    boundBy: 'trunk',
  });
});

test('ratings: next above, largest below, and none', () => {
  expect(nextRatingA('IEC 60898', 1.25 * 16)).toBe(20);
  expect(largestRatingA('IEC 60898', 29.274)).toBe(25);
  expect(nextRatingA('IEC 60898', 200)).toBeUndefined();
  expect(largestRatingA('IEC 60898', 3)).toBeUndefined();
});

test.each([
  // busbar, main, inverter, option → compared, limit (NEC 705.12, by hand)
  [200, 200, 32, '120 percent opposite ends', 240, 240, true],
  [200, 200, 33, '120 percent opposite ends', 241.25, 240, false],
  [225, 200, 16, 'sum', 220, 225, true],
] as const)(
  '%i A bus, %i A main, %i A of sun, %s',
  (busbarA, mainBreakerA, inverterOutputCurrentA, option, comparedA, limitA, allowed) => {
    const got = necBusbar({ busbarA, mainBreakerA, inverterOutputCurrentA, option });
    expect(got).toMatchObject({ comparedA, limitA, allowed });
  },
);

test('200 A bus and main let 32 A in at the far end, none beside the main', () => {
  const panel = { busbarA: 200, mainBreakerA: 200, inverterOutputCurrentA: 31.46 } as const;
  expect(necBusbar({ ...panel, option: '120 percent opposite ends' }).largestInverterCurrentA).toBeCloseTo(32, 10);
  expect(necBusbar({ ...panel, option: 'sum' })).toMatchObject({ allowed: false, largestInverterCurrentA: 0 });
});

test('a board fed by an 80 A fuse and a 32 A generation breaker needs bars for 112 A', () => {
  expect(sumOfSources(100, [80, 32])).toMatchObject({ comparedA: 112, allowed: false });
  expect(sumOfSources(125, [80, 32]).allowed).toBe(true);
});

test('13 units of 1.21 A at 240 V on 12 AWG: every step by hand', () => {
  // I 15.73; 1.25 I 19.66 → 20 A; 90 °C column 30 · 0.91 = 27.3 A; rise 2 · 0.08 kft · 2.0 Ω · 15.73 A = 5.0336 V
  const got = necBranch({
    moduleInverters: 13,
    ratedCurrentEachA: 1.21,
    awg: '12',
    insulationC: 90,
    terminalC: 60,
    ambientC: 38,
    currentCarryingConductors: 2,
    oneWayFt: 80,
    nominalV: 240,
    rOhmPerKft: 2,
  });
  expect(got).toMatchObject({
    ocpdA: 20,
    terminalColumnA: 20,
    terminalOk: true,
    conditionsOk: true,
    smallConductorOk: true,
  });
  expect(got.correctedAmpacityA).toBeCloseTo(27.3, 10);
  expect(got.riseV).toBeCloseTo(5.0336, 10);
  expect(got.risePercent).toBeCloseTo(2.09733, 5);
});

test('14 AWG under a 20 A device breaks 240.4(D)', () => {
  const got = necBranch({
    moduleInverters: 11,
    ratedCurrentEachA: 1.21,
    awg: '14',
    insulationC: 90,
    terminalC: 75,
    ambientC: 30,
    currentCarryingConductors: 2,
    oneWayFt: 80,
    nominalV: 240,
    rOhmPerKft: 3.1,
  });
  expect(got).toMatchObject({ ocpdA: 20, terminalOk: true, smallConductorOk: false });
});

test('grounding conductor: 25 A takes the 60 A row, 10 AWG', () => {
  expect(necGroundingAwg(20)).toBe('12');
  expect(necGroundingAwg(25)).toBe('10');
  expect(() => necGroundingAwg(500)).toThrow('ocpdA is 500');
});

test('refuses what has no meaning', () => {
  expect(() => unitsPerBranch({ ocpdA: 20, ratedCurrentEachA: 0 })).toThrow('ratedCurrentEachA is 0');
  const panel = { busbarA: 200, mainBreakerA: 200, inverterOutputCurrentA: 32 } as const;
  expect(() => necBusbar({ ...panel, option: 'sum of breakers' })).toThrow('Add the ratings of every breaker');
  expect(() => necBusbar({ ...panel, option: 'other' as never })).toThrow('Name the option of 705.12');
});
