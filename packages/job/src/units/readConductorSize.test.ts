import { expect, test } from 'vitest';
import { readConductorSize } from './readConductorSize.ts';

test('a conductor keeps the system it was typed in', () => {
  expect(readConductorSize('6 mm²')).toEqual({ kind: 'area', areaMm2: 6 });
  expect(readConductorSize('16')).toEqual({ kind: 'area', areaMm2: 16 });
  expect(readConductorSize('#10')).toEqual({ kind: 'gauge', awg: '10' });
  expect(readConductorSize('2/0 AWG')).toEqual({ kind: 'gauge', awg: '2/0' });
  expect(readConductorSize('250 kcmil')).toEqual({ kind: 'gauge', awg: '250 kcmil' });
});

test('a gauge that the tables do not hold is refused and not rounded to its neighbour', () => {
  expect(readConductorSize('7 AWG')).toMatchObject({ kind: 'refused', found: '7 AWG is no gauge the tables hold' });
  expect(readConductorSize('thick')).toMatchObject({ kind: 'refused', found: 'thick is no number' });
});
