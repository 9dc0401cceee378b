import { expect, test } from 'vitest';
import { readNumber } from './readNumber.ts';

test('numbers as people type them', () => {
  const value = (typed: string, unit = 'm') => {
    const read = readNumber(typed, unit);
    return read.kind === 'number' ? read.value : read.kind;
  };
  expect(value('31')).toBe(31);
  expect(value(' 31.5 m')).toBe(31.5);
  expect(value('31,5')).toBe(31.5);
  expect(value('16 800', 'mm')).toBe(16800);
  expect(value('16,800', 'mm')).toBe(16800);
  expect(value('\u22124 °C', '°C')).toBe(-4);
  expect(value('')).toBe('empty');
  expect(value('12 ft')).toBe('words');
  expect(value('1e5')).toBe('words');
  expect(value('-')).toBe('words');
});
