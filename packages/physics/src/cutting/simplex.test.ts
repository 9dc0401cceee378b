import { expect, test } from 'vitest';
import { Simplex } from './simplex.ts';

const always = () => true;

test('two bars to mix, by hand: 12 of the first need and 9 of the second', () => {
  // x: one of each; y: two of the first; alone: one of the first, one of the second
  // all of x serves the 9 seconds and 9 firsts, 3 firsts are left for 1.5 y: cost 10.5
  const simplex = new Simplex(
    [12, 9],
    [
      { cost: 1, rows: [0], values: [1] },
      { cost: 1, rows: [1], values: [1] },
    ],
  );
  expect(simplex.value).toBe(21);
  simplex.columns.push({ cost: 1, rows: [0, 1], values: [1, 1] }, { cost: 1, rows: [0], values: [2] });
  expect(simplex.solve(always)).toBe(true);
  expect(simplex.value).toBeCloseTo(10.5, 12);
  // y at cost 1 prices the first at a half, x then the second: 12/2 + 9/2 = 10.5, the same from the other side
  expect([...simplex.prices]).toEqual([0.5, 0.5]);
  expect(simplex.uses).toEqual(
    expect.arrayContaining([
      { column: 2, amount: 9 },
      { column: 3, amount: 1.5 },
    ]),
  );
});

test('Beale 1955: the programme that goes round in circles where ratios tie ends at −5/4', () => {
  // min −3/4 x4 + 20 x5 − 1/2 x6 + 6 x7, three slacks to start, two of them at 0 (from memory)
  const simplex = new Simplex(
    [0, 0, 1],
    [0, 1, 2].map((row) => ({ cost: 0, rows: [row], values: [1] })),
  );
  simplex.columns.push(
    { cost: -0.75, rows: [0, 1], values: [0.25, 0.5] },
    { cost: 20, rows: [0, 1], values: [-8, -12] },
    { cost: -0.5, rows: [0, 1, 2], values: [-1, -0.5, 1] },
    { cost: 6, rows: [0, 1], values: [9, 3] },
  );
  expect(simplex.solve(always)).toBe(true);
  // x4 = 1, x6 = 1: −3/4 − 1/2
  expect(simplex.value).toBeCloseTo(-1.25, 12);
});

test('a long run with the inverse rebuilt on the way: value and prices tell the same cost', () => {
  let seed = 5;
  const random = () => {
    seed = (seed * 1103515245 + 12345) % 2147483648;
    return seed / 2147483648;
  };
  const rows = Array.from({ length: 40 }, (_, i) => i);
  const b = rows.map(() => 1 + Math.floor(random() * 9));
  const simplex = new Simplex(
    b,
    rows.map((row) => ({ cost: 1, rows: [row], values: [1] })),
  );
  for (let k = 0; k < 600; k++) {
    const own = rows.filter(() => random() < 0.12);
    simplex.columns.push({ cost: 0.5 + 2 * random(), rows: own, values: own.map(() => 1 + Math.floor(random() * 3)) });
  }
  expect(simplex.solve(always)).toBe(true);
  expect(simplex.pivots).toBeGreaterThan(60);
  const { prices } = simplex;
  expect(b.reduce((sum, amount, i) => sum + amount * prices[i], 0)).toBeCloseTo(simplex.value, 8);
  for (const { cost, rows: own, values } of simplex.columns) {
    expect(cost - own.reduce((sum, row, at) => sum + prices[row] * values[at], 0)).toBeGreaterThan(-1e-8);
  }
  const made = new Float64Array(40);
  for (const { column, amount } of simplex.uses) {
    simplex.columns[column].rows.forEach((row, at) => {
      made[row] += amount * simplex.columns[column].values[at];
    });
  }
  expect(Math.max(...b.map((wanted, i) => Math.abs(made[i] - wanted)))).toBeLessThan(1e-8);
});

test('stops where it may not pivot, and is loud where there is no least value', () => {
  const make = () => new Simplex([1], [{ cost: 0, rows: [0], values: [1] }]);
  const stopped = make();
  stopped.columns.push({ cost: -1, rows: [0], values: [1] });
  expect(stopped.solve(() => false)).toBe(false);
  const endless = make();
  endless.columns.push({ cost: -1, rows: [0], values: [-1] });
  expect(() => endless.solve(always)).toThrow('no least value');
});
