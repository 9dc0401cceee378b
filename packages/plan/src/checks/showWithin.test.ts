import { expect, test } from 'vitest';
import { showWithin, signed } from './showWithin.ts';
import { against, shown } from './units.ts';

test('a figure that fails never reads like its limit: 2.004 of 2.000', () => {
  expect(showWithin(2.004, 2, 'at most', 2)).toEqual({ value: '2.004', limit: '2.000' });
  expect(showWithin(1.9999996, 2, 'at least', 2)).toEqual({ value: '1.9999996', limit: '2.0000000' });
});

test('one that meets keeps the decimals it was asked for', () => {
  expect(showWithin(1.996, 2, 'at most', 2)).toEqual({ value: '2.00', limit: '2.00' });
  expect(showWithin(5.32, 4.6, 'at most', 2)).toEqual({ value: '5.32', limit: '4.60' });
});

test('what the machine leaves behind is no failure: 0.1 + 0.2 of 0.3', () => {
  expect(0.1 + 0.2).not.toBe(0.3);
  expect(showWithin(0.1 + 0.2, 0.3, 'at most', 2)).toEqual({ value: '0.30', limit: '0.30' });
});

test('a minus is a minus sign, and nothing is not minus nothing', () => {
  expect(signed(-3.2, 1)).toBe('−3.2');
  expect(signed(-0.001, 1)).toBe('0.0');
});

test('each unit has its decimals, whole figures none', () => {
  expect(against(480.2, 'at least', 600, 'mm').shown).toEqual({ value: '480 mm', limit: '600 mm' });
  expect(against(63, 'at most', 100, 'A').shown).toEqual({ value: '63 A', limit: '100 A' });
  expect(against(20.87, 'at most', 20, 'A').shown).toEqual({ value: '20.87 A', limit: '20.00 A' });
  expect(shown(0.5, '')).toBe('0.50');
});
