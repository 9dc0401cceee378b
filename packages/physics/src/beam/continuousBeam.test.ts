import { expect, test } from 'vitest';
import { continuousBeam } from './continuousBeam.ts';

const unit = { eiNm2: 1, uniformNPerM: 1 };

// Continuous beams with w = L = EI = 1. The first four agree with handbook tables; the rest worked by Clapeyron's
// three-moment equations. Five digits printed, so 1e-5.
test.each([
  ['one span', 1, [0, 1], [0.5, 0.5], [0, 0], 0.01302],
  ['two spans', 2, [0, 1, 2], [0.375, 1.25, 0.375], [0, -0.125, 0], 0.00542],
  ['three spans', 3, [0, 1, 2, 3], [0.4, 1.1, 1.1, 0.4], [0, -0.1, -0.1, 0], 0.00688],
  [
    'four spans',
    4,
    [0, 1, 2, 3, 4],
    [0.39286, 1.14286, 0.92857, 1.14286, 0.39286],
    [0, -0.10714, -0.07143, -0.10714, 0],
    0.00646,
  ],
  ['spans 1 and 1.5', 2.5, [0, 1, 2.5], [0.28125, 1.61458, 0.60417], [0, -0.21875, 0], 0.03569],
  ['one span and an overhang of 0.4', 1.4, [0, 1], [0.42, 0.98], [0, -0.08], undefined],
  ['0.3 + 1 + 1 + 0.3', 2.6, [0.3, 1.3, 2.3], [0.7425, 1.115, 0.7425], [-0.045, -0.1025, -0.045], undefined],
])('%s under uniform load', (_, lengthM, supportsAtM, reactionsN, momentsNm, deflectionM) => {
  const got = continuousBeam({ ...unit, lengthM, supportsAtM });
  got.reactionsN.forEach((r, i) => {
    expect(r).toBeCloseTo(reactionsN[i] as number, 5);
  });
  got.supportMomentsNm.forEach((m, i) => {
    expect(m).toBeCloseTo(momentsNm[i] as number, 5);
  });
  expect(got.reactionsN).toHaveLength(reactionsN.length);
  if (deflectionM !== undefined) expect(got.deflection.value).toBeCloseTo(deflectionM, 5);
});

test('one span sags wL²/8 in its middle', () => {
  const got = continuousBeam({ ...unit, lengthM: 1, supportsAtM: [0, 1] });
  expect(got.sagging).toEqual({ value: expect.closeTo(0.125, 10), atM: expect.closeTo(0.5, 10) });
  expect(got.largestMomentNm).toBeCloseTo(0.125, 10);
});

test('an overhang of 0.4 lowers the span to 0.0882 and lifts nothing', () => {
  // reaction 0.42: zero shear at 0.42, moment 0.42²/2
  const got = continuousBeam({ ...unit, lengthM: 1.4, supportsAtM: [0, 1] });
  expect(got.sagging.value).toBeCloseTo(0.0882, 10);
  expect(got.sagging.atM).toBeCloseTo(0.42, 10);
});

test('two spans with P in both middles, and in one only (Clapeyron)', () => {
  const both = continuousBeam({
    lengthM: 2,
    supportsAtM: [0, 1, 2],
    eiNm2: 1,
    pointLoads: [
      { atM: 0.5, forceN: 1 },
      { atM: 1.5, forceN: 1 },
    ],
  });
  [0.3125, 1.375, 0.3125].forEach((r, i) => {
    expect(both.reactionsN[i]).toBeCloseTo(r, 10);
  });
  expect(both.supportMomentsNm[1]).toBeCloseTo(-0.1875, 10);
  expect(both.deflection.value).toBeCloseTo(0.00932, 5);

  const one = continuousBeam({ lengthM: 2, supportsAtM: [0, 1, 2], eiNm2: 1, pointLoads: [{ atM: 0.5, forceN: 1 }] });
  // the far foot is pulled the other way
  [0.40625, 0.6875, -0.09375].forEach((r, i) => {
    expect(one.reactionsN[i]).toBeCloseTo(r, 10);
  });
  expect(one.deflection.value).toBeCloseTo(0.01501, 5);
});

test('a load at the tip of a cantilever: moment P·a, tip P·a²(l + a)/3EI', () => {
  const got = continuousBeam({ lengthM: 1.4, supportsAtM: [0, 1], eiNm2: 1, pointLoads: [{ atM: 1.4, forceN: 1 }] });
  expect(got.hogging).toEqual({ value: expect.closeTo(-0.4, 10), atM: expect.closeTo(1, 10) });
  expect(got.tipsM[1]).toBeCloseTo((0.16 * 1.4) / 3, 10);
});

test('a hinge 0.2 beyond the middle foot of two spans (by hand): 0.4, 1.2, 0.4 and −0.10', () => {
  // right part 0.8 long, simply held: 0.4 at the foot and 0.4 on the hinge; M = −0.4·0.2 − 0.2²/2 = −0.1
  const got = continuousBeam({ ...unit, lengthM: 2, supportsAtM: [0, 1, 2], hingesAtM: [1.2] });
  [0.4, 1.2, 0.4].forEach((r, i) => {
    expect(got.reactionsN[i]).toBeCloseTo(r, 10);
  });
  expect(got.supportMomentsNm[1]).toBeCloseTo(-0.1, 10);
});

test('law: feet together carry the whole load, and their moments about one end balance', () => {
  const loads = [
    { atM: 0.1, forceN: 300 },
    { atM: 2.7, forceN: -120 },
    { atM: 5.9, forceN: 450 },
  ];
  const supportsAtM = [0.4, 1.6, 2.9, 4.1, 5.5];
  const got = continuousBeam({ lengthM: 6, supportsAtM, eiNm2: 4830, uniformNPerM: 85, pointLoads: loads });
  const push = got.reactionsN.reduce((sum, r) => sum + r, 0);
  const turn = got.reactionsN.reduce((sum, r, i) => sum + r * (supportsAtM[i] as number), 0);
  expect(push).toBeCloseTo(85 * 6 + 630, 6);
  expect(turn).toBeCloseTo(85 * 18 + 0.1 * 300 - 2.7 * 120 + 5.9 * 450, 6);
});

test('refuses a mechanism, a foot off the beam, a beam on one foot', () => {
  const beam = { ...unit, lengthM: 2 };
  expect(() => continuousBeam({ ...beam, supportsAtM: [0, 2], hingesAtM: [1] })).toThrow('free to swing');
  expect(() => continuousBeam({ ...beam, supportsAtM: [1] })).toThrow('Add a foot');
  expect(() => continuousBeam({ ...beam, supportsAtM: [0, 2.5] })).toThrow('supportsAtM[1] is 2.5');
  expect(() => continuousBeam({ ...beam, supportsAtM: [] })).toThrow('Place the feet');
});

test.each([0.4e-3, 0.6e-3, 1e-3, 3e-3])('a clamp %d m from a foot does not make the beam swing', (hairM) => {
  // two spans of 1 m, 100 N a hair beside the middle foot: all but a thousandth of it goes straight down
  const got = continuousBeam({
    lengthM: 2,
    supportsAtM: [0, 1, 2],
    eiNm2: 7000,
    pointLoads: [{ atM: 1 + hairM, forceN: 100 }],
  });
  expect(got.reactionsN[1]).toBeGreaterThan(99.5);
  expect(got.reactionsN.reduce((sum, r) => sum + r, 0)).toBeCloseTo(100, 3);
});
