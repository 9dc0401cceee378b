import { expect, test } from 'vitest';
import { ridders } from './ridders.ts';

test('the cube root of two, and Kepler by hand', () => {
  const cube = (x: number): number => x * x * x - 2;
  expect(ridders(cube, 0, cube(0), 2, cube(2), 1e-13)).toBeCloseTo(1.259921049894873, 12);
  // Meeus, Astronomical Algorithms, example 30.a (from memory): M = 5°, e = 0.1 gives E = 5.554589°
  const deg = Math.PI / 180;
  const kepler = (x: number): number => x - 0.1 * Math.sin(x) - 5 * deg;
  expect(ridders(kepler, 0, kepler(0), 1, kepler(1), 1e-13) / deg).toBeCloseTo(5.554589, 6);
});

test('a bracket without a change of sign is a mistake of ours and loud', () => {
  expect(() => ridders((x) => x * x + 1, -1, 2, 1, 2, 1e-9)).toThrow('do not bracket');
});
