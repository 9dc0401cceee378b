import { expect, test } from 'vitest';
import { keepTogether } from './keepTogether.ts';

test('a number and its unit stay on one line, everything else may break', () => {
  expect(keepTogether('Trunk A rises 5.42 V at N1·3. The limit is 4.60 V.')).toBe(
    'Trunk A rises 5.42\u00a0V at N1·3. The limit is 4.60\u00a0V.',
  );
  expect(keepTogether('4 breakers side by side at 40 °C. The fullest runs at 82 %; 76 % is the most.')).toBe(
    '4 breakers side by side at 40\u00a0°C. The fullest runs at 82\u00a0%; 76\u00a0% is the most.',
  );
});

test('a figure of four digits or more is set in thousands, a year or a standard is not', () => {
  expect(keepTogether('Starts with 12190 VA. The battery gives 9000 VA.')).toBe(
    'Starts with 12\u202f190\u00a0VA. The battery gives 9\u202f000\u00a0VA.',
  );
  expect(keepTogether('AS/NZS 4777.1 2024, of 1978.')).toBe('AS/NZS 4777.1 2024, of 1978.');
});

test('a word that begins like a unit is no unit', () => {
  expect(keepTogether('Heath 13 already stands, 2 Vents too')).toBe('Heath 13 already stands, 2 Vents too');
});
