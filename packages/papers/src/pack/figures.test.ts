import { expect, test } from 'vitest';
import { against, civilTime, clock, figure, listed, mm, mmFrom, perCent, rangeOf, withUnit } from './figures.ts';

test('figures are written as the drawing office writes them', () => {
  expect(figure(16800)).toBe('16\u202f800'); // thin space from four figures on
  expect(figure(1234567.4, 0)).toBe('1\u202f234\u202f567');
  expect(figure(-4, 1)).toBe('−4.0'); // a true minus
  expect(figure(-0.004, 1)).toBe('0.0'); // nought has no sign
  expect(figure(0.0030812)).toBe('0.00308'); // three significant figures
  expect(mm(5.8449)).toBe('5\u202f845');
  expect(withUnit(4.6, 'V', 2)).toBe('4.60\u00a0V');
  expect(rangeOf(0.085, 0.185, 'Ω', 2)).toBe('0.09 to 0.18\u00a0Ω'); // 0.185 lies just below its decimal
});

test('a tape has no minus: what lies on the other side says which', () => {
  expect(mmFrom(5.8449, 'left of it')).toBe('5\u202f845');
  expect(mmFrom(-0.3, 'left of it')).toBe('300 left of it');
  expect(mmFrom(-0.0004, 'left of it')).toBe('0'); // less than half a millimetre is none
});

test('a value that fails never reads like its limit', () => {
  expect(against(2.004, 2, 'V', true)).toBe('2.004 of 2.000\u00a0V');
  expect(against(4.6000001, 4.6, 'V', true)).toBe('4.6000001 of 4.6000000\u00a0V');
  expect(against(5.42, 4.6, 'V', true)).toBe('5.42 of 4.60\u00a0V');
  // what meets needs no more digits than reading asks for
  expect(against(1.2000000001, 1.2, 'm', false)).toBe('1.20 of 1.20\u00a0m');
  expect(against(480, 600, 'mm', true)).toBe('480 of 600\u00a0mm');
  expect(against(0.0004, 1, '%', false)).toBe('0.00 of 1.00\u00a0%');
});

test('a chance is never rounded to certain or to none', () => {
  expect(perCent(0.9994)).toBe('over 99 %');
  expect(perCent(0.0009)).toBe('under 1 %');
  expect(perCent(0.96)).toBe('96\u00a0%');
  expect(perCent(1)).toBe('100\u00a0%');
});

test('hours and instants are told on the clock of the place', () => {
  expect(clock(17.4)).toBe('17:24');
  expect(clock(23.999)).toBe('00:00');
  // daylight saving in Melbourne: UTC + 11 in January, + 10 in May
  expect(civilTime('2026-05-14T20:10:00Z', 'Australia/Melbourne')).toBe('15 May 2026, 06:10');
  expect(civilTime('2026-01-14T20:10:00Z', 'Australia/Melbourne')).toBe('15 Jan 2026, 07:10');
  expect(listed(['a', 'b', 'c'])).toBe('a, b and c');
});
