import { expect, test } from 'vitest';
import fixture from '../../fixtures/elec-cutting.json' with { type: 'json' };
import { barsAtLeast } from './barsAtLeast.ts';
import { type CutPlan, cutStock, fewestBars } from './cutStock.ts';
import { onGrid } from './onGrid.ts';
import { splitLines } from './splitLines.ts';

/** Every piece once, no bar overfull, counted by hand from the answer. */
function holds(plan: CutPlan, sizes: readonly number[], stock: number, kerf = 0): void {
  expect(plan.items.flat().sort((a, b) => a - b)).toEqual(sizes.map((_, i) => i));
  plan.bins.forEach((bar, k) => {
    expect(bar).toEqual(plan.items[k]?.map((i) => sizes[i]));
    // n pieces need n − 1 cuts at least
    expect(bar.reduce((sum, s) => sum + s, 0) + (bar.length - 1) * kerf).toBeLessThanOrEqual(stock + 1e-6);
  });
}

/** The certificate by another road: worth of the best bar by a table over whole lengths, a piece at a time. */
function certifies({ certificate, lowerBound }: CutPlan, sizes: readonly number[], stock: number, kerf = 0): void {
  const table = new Float64Array(stock + kerf + 1);
  sizes.forEach((size, i) => {
    const weight = size + kerf;
    for (let room = stock + kerf; room >= weight; room--) {
      table[room] = Math.max(table[room], table[room - weight] + certificate.worths[i]);
    }
  });
  expect(table[stock + kerf]).toBeLessThanOrEqual(certificate.barWorth);
  const total = certificate.worths.reduce((sum, worth) => sum + worth, 0);
  // lowerBound − 1 bars cannot hold what the pieces are worth
  expect(total).toBeGreaterThan((lowerBound - 1) * certificate.barWorth);
  expect(Number.isInteger(total) && Number.isInteger(certificate.barWorth)).toBe(true);
}

test.each(fixture.instances)('$name: proven optimum $optimumBins', ({ binCapacity, sizes, optimumBins }) => {
  const got = cutStock({ binCapacity, sizes });
  holds(got, sizes, binCapacity);
  expect(got).toMatchObject({ count: optimumBins, lowerBound: optimumBins, proven: true });
  certifies(got, sizes, binCapacity);
});

test('the same plan in millimetres, metres and inches: the lengths decide, not the unit', () => {
  const [{ binCapacity, sizes, optimumBins }] = fixture.instances;
  for (const unit of [0.001, 1 / 25.4]) {
    const got = cutStock({ binCapacity: binCapacity * unit, sizes: sizes.map((size) => size * unit) });
    expect(got).toMatchObject({ count: optimumBins, proven: true });
  }
});

test('lengths that sum to the stock only in exact arithmetic share a bar', () => {
  // 0.1 + 0.2 is 0.30000000000000004 to a computer
  expect(cutStock({ binCapacity: 0.3, sizes: [0.1, 0.2] }).count).toBe(1);
  expect(cutStock({ binCapacity: 0.3, sizes: [0.1, 0.2001] }).count).toBe(2);
});

test('with next to no effort the answer is honest: a plan, a bound below it, not proven', () => {
  const { binCapacity, sizes } = fixture.instances.find(
    ({ name }) => name === 'u120_08',
  ) as (typeof fixture.instances)[0];
  const { bars, least } = fewestBars(onGrid(sizes, binCapacity, 0), 1000);
  // material needs 50; first-fit decreasing takes 51, as the published table says
  expect([bars.length, least.bars]).toEqual([51, 50]);
});

test('27 rail pieces from 4800 mm: ten bars, proven, where first-fit decreasing takes eleven', () => {
  const demand: [number, number][] = [
    [2300, 6],
    [2080, 7],
    [1370, 7],
    [1030, 7],
  ];
  const sizes = demand.flatMap(([length, pieces]) => new Array<number>(pieces).fill(length));
  const got = cutStock({ binCapacity: 4800, sizes });
  holds(got, sizes, 4800);
  expect(got).toMatchObject({ count: 10, lowerBound: 10, proven: true, waste: 2840 });
});

test('the kerf counts between pieces, not after the last', () => {
  // 2 · 2100 = 4200 leaves no room for the cut between them
  expect(cutStock({ binCapacity: 4200, sizes: [2100, 2100], kerf: 3 }).count).toBe(2);
  expect(cutStock({ binCapacity: 4203, sizes: [2100, 2100], kerf: 3 }).count).toBe(1);
  expect(cutStock({ binCapacity: 4200, sizes: [4200], kerf: 3 }).count).toBe(1);
});

test('the bound by hand: three pieces over a half cannot share, two of 40 fit beside none of them', () => {
  // material: (3·70 + 2·40)/100 = 2.9 → 3; L2 at threshold 40: 3 + ⌈(80 − 90)/100⌉ → 3; at 31–40 the 70s stand alone: 3 + 1
  expect(barsAtLeast([70, 70, 70, 40, 40], 100)).toBe(4);
});

test('law: the count is never below the bound, over seeded roofs', () => {
  let seed = 7;
  const random = () => {
    seed = (seed * 1103515245 + 12345) % 2147483648;
    return seed / 2147483648;
  };
  for (let round = 0; round < 200; round++) {
    const sizes = Array.from({ length: 3 + Math.floor(random() * 30) }, () => 300 + Math.floor(random() * 3900));
    const got = cutStock({ binCapacity: 4200, sizes, kerf: 3 });
    holds(got, sizes, 4200, 3);
    expect(got.count).toBeGreaterThanOrEqual(got.lowerBound);
    expect(got.proven).toBe(got.count === got.lowerBound);
    certifies(got, sizes, 4200, 3);
  }
});

test('a row of 10.446 m from 4.2 m stock: two splices, no piece under 300 mm', () => {
  const [row] = splitLines([{ lengthMm: 10446 }], { stockMm: 4200, minimumPieceMm: 300 });
  expect(row).toEqual({ splicesAtMm: [4200, 8400], piecesMm: [4200, 4200, 2046] });
  // 8.5 m would leave 100 mm: the last splice steps back
  const [short] = splitLines([{ lengthMm: 8500 }], { stockMm: 4200, minimumPieceMm: 300 });
  expect(short?.piecesMm).toEqual([4200, 4000, 300]);
});

test('splices keep to their zones and away from the neighbouring rail', () => {
  const zonesMm: [number, number][] = [
    [1500, 1700],
    [2700, 2900],
    [3900, 4100],
    [5100, 5300],
  ];
  const rails = splitLines(
    [
      { lengthMm: 7000, zonesMm },
      { lengthMm: 7000, zonesMm },
    ],
    {
      stockMm: 4200,
      minimumPieceMm: 300,
      staggerMm: 600,
    },
  );
  expect(rails[0]?.splicesAtMm).toEqual([4100]);
  // 4100 ± 600 shuts the third zone; from 2900 the end at 7000 is within reach
  expect(rails[1]?.splicesAtMm).toEqual([2900]);
});

test('refuses a piece longer than the stock, and zones no bar can span', () => {
  expect(() => cutStock({ binCapacity: 4200, sizes: [1000, 4300] })).toThrow('sizes[1] is 4300');
  expect(() => cutStock({ binCapacity: 4200, sizes: [] })).toThrow('at least one length');
  const line = { lengthMm: 9000, zonesMm: [[1000, 1100]] as [number, number][] };
  expect(() => splitLines([line], { stockMm: 4200, minimumPieceMm: 300 })).toThrow('Widen the splice zones');
});

test('a line whose far end no zone reaches is given up at once, however many ways lead towards it', () => {
  // sixty zones a metre apart, then six metres without one: each way on is tried once, not 2^30 times
  const zonesMm = Array.from({ length: 60 }, (_, k) => [1000 * k + 150, 1000 * k + 330] as const);
  expect(() => splitLines([{ lengthMm: 66_000, zonesMm }], { stockMm: 4200, minimumPieceMm: 300 })).toThrow(
    'splice zones within reach of each other',
  );
});
