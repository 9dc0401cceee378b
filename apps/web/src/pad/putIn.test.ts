import { given, type Working, worked } from '@eaveline/plan';
import { expect, test } from 'vitest';
import { putIn } from './putIn.ts';

const figure = (name: string, value: number, unit: string, symbol?: string): Working => ({
  ...given(name, value, unit, 'the case'),
  ...(symbol === undefined ? {} : { symbol }),
});

test('symbols: a home run of 31 m in 6 mm², 15.65 A', () => {
  // 2 · 0.003564 Ω/m · 15.652 A · 31 m = 3.4587 V
  const run = worked('Home run', 2 * 0.003564 * 15.652 * 31, 'V', 'ΔU = 2 · r · I · L', 'by hand', [
    figure('home run, 6 mm²', 0.003564, 'Ω/m', 'r'),
    figure('length, one way', 31, 'm', 'L'),
    figure('current', 15.652, 'A', 'I'),
  ]);
  expect(putIn(run)).toBe('2 · 3.56\u00a0mΩ/m · 15.7\u00a0A · 31\u00a0m');
});

test('names, and the first words of a name; an index below the line', () => {
  const left = worked('Left for it', 7390, 'VA', 'short-time rating − the rest', 'by hand', [
    figure('short-time rating', 9000, 'VA'),
    figure('the rest', 1610, 'VA'),
  ]);
  expect(putIn(left)).toBe('9\u202f000\u00a0VA − 1\u202f610\u00a0VA');
  const most = worked('Most it may rise', 4.6, 'V', 'share · nominal', 'by hand', [
    figure('share', 0.02, ''),
    figure('nominal between its terminals', 230, 'V'),
  ]);
  expect(putIn(most)).toBe('0.0200 · 230\u00a0V');
  const far = worked('Far unit', 5.42, 'V', 'ΔU = ΔU₁ + ΔU₂ + ΔU₃', 'by hand', [
    figure('Trunk', 1.58, 'V', 'ΔU₁'),
    figure('Home run', 3.46, 'V', 'ΔU₂'),
    figure('Mains', 0.38, 'V', 'ΔU₃'),
  ]);
  expect(putIn(far)).toBe('1.58\u00a0V + 3.46\u00a0V + 0.380\u00a0V');
});

test('products go before sums, brackets before both; what follows a comma is words', () => {
  const area = worked('Area', 66.633, 'm²', 'A = (eave + ridge) ÷ 2 · slope length', 'by hand', [
    figure('eave', 16.8, 'm'),
    figure('ridge', 6, 'm'),
    figure('slope length', 5.845, 'm'),
  ]);
  expect(putIn(area)).toBe('(16.8\u00a0m + 6\u00a0m) ÷ 2 · 5.84\u00a0m');
  const r = worked('r', 0.0097, 'Ω/m', 'r = r₂₀ · (1 + 0.00393 · (T − 20)), in service', 'by hand', [
    figure('at 20 °C', 0.0097 / (1 + 0.00393 * 55), 'Ω/m', 'r₂₀'),
    figure('in service', 75, '°C', 'T'),
  ]);
  expect(putIn(r)).toBe('7.98\u00a0mΩ/m · (1 + 0.00393 · (75\u00a0°C − 20))');
});

test('a sum line under line: a factor is as exact as it is written', () => {
  // 770.259 · 0.98 = 754.854; 0.9800 stands for 0.97995 to 0.98005
  const dust = (kwh: number) =>
    worked('dust', kwh, 'kWh', 'the line before × 0.9800', 'by hand', [figure('glancing light', 770.259, 'kWh')]);
  expect(putIn(dust(754.82))).toBe('770\u00a0kWh × 0.9800');
  expect(putIn(dust(754))).toBeUndefined();
});

test('nothing that does not come to the figure is written', () => {
  // per mille against share, a sentence, two inputs of one name, a term nobody gave
  const inputs = [figure('a', 2, ''), figure('b', 3, '')];
  expect(putIn(worked('x', 6, '', 'a · b', 'by hand', inputs))).toBe('2 · 3');
  expect(putIn(worked('x', 6000, '', 'a · b', 'by hand', inputs))).toBeUndefined();
  expect(putIn(worked('x', 6, '', 'a times b', 'by hand', inputs))).toBeUndefined();
  expect(putIn(worked('x', 6, '', 'a · b · c', 'by hand', inputs))).toBeUndefined();
  expect(putIn(worked('x', 4, '', 'a · a', 'by hand', [figure('a', 2, ''), figure('a', 3, '')]))).toBeUndefined();
  expect(putIn(worked('x', 2, '', 'a', 'by hand', inputs))).toBeUndefined();
  expect(putIn(given('x', 2, '', 'the case'))).toBeUndefined();
});
