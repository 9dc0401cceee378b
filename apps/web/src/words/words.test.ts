import { expect, test } from 'vitest';
import { clock } from './clock.ts';
import { counted, listed, ordinal } from './count.ts';
import { apart, figure, percent, withUnit } from './figure.ts';

test('a figure has a true minus, thin thousands from four figures and three figures where nothing else is asked', () => {
  expect(figure(5.3217)).toBe('5.32');
  expect(figure(16800)).toBe('16\u202f800');
  expect(figure(1154, 0)).toBe('1\u202f154');
  expect(figure(-4)).toBe('\u22124');
  expect(figure(-0.001, 1)).toBe('0.0');
  expect(withUnit(22.5, '°', 1)).toBe('22.5°');
  expect(percent(0.976)).toBe('98\u00a0%');
});

test('NaN is never lettered', () => {
  expect(() => figure(Number.NaN)).toThrow('no figure');
});

test('a 2.00 that fails a 2.00 shows more digits', () => {
  // 2.0004 of 2.0000: the fourth decimal is the first that tells them apart
  expect(apart(2.0004, 2)).toEqual({ value: '2.0004', limit: '2.0000', decimals: 4 });
  expect(apart(5.32, 4.6)).toEqual({ value: '5.32', limit: '4.60', decimals: 2 });
});

test('clock, counts and lists in words', () => {
  expect(clock(7.5)).toBe('07:30');
  expect(clock(15.999)).toBe('16:00');
  expect(counted(1, 'plane')).toBe('one plane');
  expect(counted(26, 'module')).toBe('26 modules');
  expect(ordinal(5)).toBe('fifth');
  expect(listed(['north', 'east', 'west'])).toBe('north, east and west');
});
