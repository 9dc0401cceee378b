import { expect, test } from 'vitest';
import { gaugeScale, gaugeTicks, roundStep, stepDecimals } from './gaugeScale.ts';

test('a rise of 5.32 against 4.60 stands on a scale from nought in whole volts', () => {
  // highest 5.32 and a quarter more is 6.65; a fifth of it 1.33; the next round step is 2
  const scale = gaugeScale([5.32, 4.6]);
  expect(scale).toEqual({ from: 0, to: 6, step: 2 });
  expect(gaugeTicks(scale)).toEqual([0, 2, 4, 6]);
});

test('values far from nought do not begin there, and lie inside the scale', () => {
  const { from, to } = gaugeScale([241, 253, 238]);
  expect(from).toBeGreaterThan(150);
  expect(from).toBeLessThan(238);
  expect(to).toBeGreaterThanOrEqual(253);
});

test('steps are round', () => {
  expect([0.13, 1.1, 22, 26, 400].map(roundStep)).toEqual([0.2, 2, 25, 50, 500]);
});

test('marks are lettered with the decimals their step needs', () => {
  expect([5, 2.5, 0.25, 0.1, 0.1 + 0.2].map(stepDecimals)).toEqual([0, 1, 2, 1, 1]);
});
