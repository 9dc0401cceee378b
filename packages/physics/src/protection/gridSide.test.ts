import { expect, test } from 'vitest';
import { coldVoltage, necColdFactor } from './coldVoltage.ts';
import { dealtInTurn, phaseBalance, splitPhaseNeutralA } from './phaseBalance.ts';
import { powerAtFrequencyPercent, responseAt } from './responseCurve.ts';

test('20 units dealt in turn: 7, 7, 6; 366 VA apart; the neutral carries one unit’s current', () => {
  // 11.139, 11.139, 9.548 A at 0°, −120°, +120° leave |11.139 − 9.548| = 1.591 A
  expect(dealtInTurn(20)).toEqual([7, 7, 6]);
  expect(dealtInTurn(1)).toEqual([1, 0, 0]);
  const got = phaseBalance({ moduleInvertersOnABC: dealtInTurn(20), ratingVaEach: 366, limitVa: 5000 });
  expect(got).toMatchObject({ phaseVa: [2562, 2562, 2196], largestDifferenceVa: 366, allowed: true });
  expect(got.neutralCurrentA).toBeCloseTo(1.5913, 4);
});

test('14 units on one phase stand 5124 VA apart: more than 5 kVA (AS/NZS 4777.1:2016)', () => {
  expect(phaseBalance({ moduleInvertersOnABC: [14, 0, 0], ratingVaEach: 366, limitVa: 5000 }).allowed).toBe(false);
  expect(splitPhaseNeutralA(12, -5)).toBe(17);
});

test.each([
  // V → reactive %, largest power % (AS/NZS 4777.2:2020 points, straight lines between them, by hand)
  ['Australia A', 250, -33.333333, 100],
  ['Australia A', 256, -53.333333, 65.714286],
  ['Australia A', 213.5, 22, 100],
  ['New Zealand', 246, -60, 60],
  ['New Zealand', 270, -60, 20],
  ['IEEE 1547 B', 1.05, -22, 100],
  ['IEEE 1547 B', 1.08, -44, 60],
] as const)('%s at %f', (region, terminal, reactive, power) => {
  const got = responseAt(region, terminal);
  expect(got.reactivePercentOfRatedVa).toBeCloseTo(reactive, 6);
  expect(got.maxPowerPercentOfRated).toBeCloseTo(power, 6);
});

test('frequency: AU at 51.1 Hz leaves 51 %, GB at 52 Hz 68 %, US at 62 Hz 35 % (droops from memory, by hand)', () => {
  expect(powerAtFrequencyPercent('AU/NZ', 51.1)).toBeCloseTo(51.43, 2);
  expect(powerAtFrequencyPercent('GB', 52)).toBeCloseTo(68, 6);
  expect(powerAtFrequencyPercent('US', 62)).toBeCloseTo(34.53, 2);
  expect(powerAtFrequencyPercent('EU', 50)).toBe(100);
  expect(powerAtFrequencyPercent('AU/NZ', 52.5)).toBe(0);
});

test('41.2 V at −0.25 %/K and −10 °C: 41.2 · 1.0875 = 44.805 V', () => {
  const got = coldVoltage({ vocStcV: 41.2, betaPercentPerK: -0.25, lowestTemperatureC: -10, inverterMaxDcV: 60 });
  expect(got.maxVoltageV).toBeCloseTo(44.805, 10);
  expect(got).toMatchObject({ withinInverterLimit: true, above120VDc: false });
});

test('NEC 690.7(A): 49.8 V passes 60 V at −18 °C (1.18) and not at −33 °C (1.23)', () => {
  const module = { vocStcV: 49.8, inverterMaxDcV: 60 };
  const mild = coldVoltage({ ...module, lowestTemperatureC: -18 });
  expect(mild.maxVoltageV).toBeCloseTo(58.764, 10);
  expect(mild.withinInverterLimit).toBe(true);
  expect(coldVoltage({ ...module, lowestTemperatureC: -33 }).withinInverterLimit).toBe(false);
});

test('a temperature between two bands belongs to the colder one', () => {
  expect([25, 22, 19.5, 0, -0.5, -5, -5.5, -40].map(necColdFactor)).toEqual([
    1, 1.02, 1.04, 1.1, 1.12, 1.12, 1.14, 1.25,
  ]);
  expect(() => necColdFactor(-41)).toThrow('Give the voltage coefficient');
});

test('refuses a coefficient in mV, a region nobody knows, two phases for three', () => {
  const module = { vocStcV: 41, lowestTemperatureC: -5, inverterMaxDcV: 60 };
  expect(() => coldVoltage({ ...module, betaPercentPerK: -103 })).toThrow('mV per K must be converted');
  expect(() => responseAt('Atlantis' as never, 230)).toThrow('region is Atlantis');
  expect(() => responseAt('IEEE 1547 B', 240)).toThrow('Give volts per unit');
  expect(() => phaseBalance({ moduleInvertersOnABC: [1, 2], ratingVaEach: 366, limitVa: 5000 })).toThrow('3 counts');
});
