import { expect, test } from 'vitest';
import { checkNormals } from './monthlyNormals.ts';

const months = (value: number) => Array.from({ length: 12 }, () => value);
const good = { ghiKwhM2Day: months(4), meanC: months(15), dayMaxC: months(20), dayMinC: months(10), windMS: undefined };

test('twelve believable months pass', () => {
  expect(() => checkNormals(good)).not.toThrow();
});

test.each([
  ['eleven months', { ...good, meanC: months(15).slice(1) }, 'meanC.length is 11; it has to be 12.'],
  ['MJ instead of kWh', { ...good, ghiKwhM2Day: months(18) }, 'ghiKwhM2Day[0] is 18; it has to be 0 to 15.'],
  ['not a number', { ...good, windMS: months(Number.NaN) }, 'windMS[0] is NaN; it has to be 0 to 40.'],
  ['exchanged extremes', { ...good, dayMaxC: months(5) }, 'dayMaxC[0] is 5; it has to be at least dayMinC[0], 10.'],
])('refuses %s', (_, normals, message) => {
  expect(() => checkNormals(normals)).toThrow(message);
});
