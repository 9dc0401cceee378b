import { expect, test } from 'vitest';
import { moduleSum } from './moduleSum.ts';

test('a loss reads as a loss, a gain as a factor, and the unit stands once', () => {
  const sum = moduleSum({
    annualKwh: 643,
    ledger: [
      { what: 'sun on level ground', value: 1604, unit: 'kWh/m²' },
      { what: 'on this plane', factor: 1.112, value: 1784, unit: 'kWh/m²' },
      { what: 'dust', factor: 0.98, value: 702, unit: 'kWh' },
    ],
  });
  expect(sum.lines.map(({ factor, value }) => [factor, value])).toEqual([
    ['', '1\u202f604 kWh/m²'],
    ['× 1.112', '1\u202f784'],
    ['\u2212 2.0 %', '702 kWh'],
  ]);
  expect(sum.total.value).toBe('643 kWh');
});
