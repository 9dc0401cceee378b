import loadHighs from 'highs';
import { expect, test } from 'vitest';
import fixture from '../../fixtures/elec-cutting.json' with { type: 'json' };
import { worthsL2 } from './barsAtLeast.ts';
import { cutStock } from './cutStock.ts';
import { dive } from './dive.ts';
import { bestFit, tightFill } from './fitBars.ts';
import { type Cutting, onGrid, type Pattern } from './onGrid.ts';
import { roundedUp, solvePatterns, wholeWorths } from './patternProgramme.ts';

const plenty = () => ({ left: 1e9 });

function dice(seed: number) {
  let state = seed;
  return (below: number) => {
    state = (state * 1103515245 + 12345) % 2147483648;
    return Math.floor((state / 2147483648) * below);
  };
}

/** Every piece once, no bar overfull. */
function holds(bars: readonly Pattern[], { capacity, weights, demand }: Cutting): void {
  const cut = demand.map(() => 0);
  for (const { classes, counts } of bars) {
    let sum = 0;
    classes.forEach((k, at) => {
      cut[k] += counts[at];
      sum += counts[at] * weights[k];
    });
    expect(sum).toBeLessThanOrEqual(capacity);
  }
  expect(cut).toEqual(demand);
}

test.each(fixture.instances)(
  '$name: the pattern programme is worth $patternBound',
  ({ binCapacity, sizes, patternBound }) => {
    const cutting = onGrid(sizes, binCapacity, 0);
    const { value, bound, worths } = solvePatterns(cutting, cutting.demand, [], Number.POSITIVE_INFINITY, plenty());
    // the published value has four decimals; ours ends early, as soon as both sides round to one number
    expect(bound).toBeLessThanOrEqual(patternBound + 1e-4);
    expect(value).toBeGreaterThanOrEqual(patternBound - 1e-4);
    expect(roundedUp(bound)).toBe(roundedUp(patternBound));
    expect(wholeWorths(cutting, worths, plenty())?.bars).toBe(roundedUp(patternBound));
  },
);

/** Fewest bars by trying every way to part the pieces into bars: the slow twin. */
function fewestByTrial(sizes: readonly number[], stock: number, kerf: number): number {
  let fewest = sizes.length;
  const room: number[] = [];
  const place = (i: number): void => {
    if (i === sizes.length) {
      fewest = Math.min(fewest, room.length);
      return;
    }
    for (let bar = 0; bar < room.length; bar++) {
      if (room[bar] < sizes[i] + kerf) continue;
      room[bar] -= sizes[i] + kerf;
      place(i + 1);
      room[bar] += sizes[i] + kerf;
    }
    room.push(stock - sizes[i]);
    place(i + 1);
    room.pop();
  };
  place(0);
  return fewest;
}

test('slow twin: every partition of up to eight pieces, 250 seeded cases with and without a kerf', () => {
  const roll = dice(3);
  for (let round = 0; round < 250; round++) {
    const [stock, kerf] = [60 + roll(60), roll(3)];
    const sizes = Array.from({ length: 3 + roll(6) }, () => 5 + roll(stock - 10));
    const fewest = fewestByTrial(sizes, stock, kerf);
    const got = cutStock({ binCapacity: stock, sizes, kerf });
    expect(got.count).toBe(fewest);
    expect(got.lowerBound).toBeLessThanOrEqual(fewest);

    // the long road by itself, without the cheap plans and bounds in front of it
    const cutting = onGrid(sizes, stock, kerf);
    const pool: Pattern[] = [];
    const first = solvePatterns(cutting, cutting.demand, pool, Number.POSITIVE_INFINITY, plenty());
    const bound = wholeWorths(cutting, first.worths, plenty())?.bars ?? 0;
    expect(bound).toBeLessThanOrEqual(fewest);
    expect(bound).toBeGreaterThanOrEqual(worthsL2(cutting).bars);
    const bars = dive(cutting, first, pool, fewest, plenty());
    holds(bars ?? [], cutting);
    expect(dive(cutting, first, pool, fewest - 1, { left: 1e5 })).toBeUndefined();
  }
});

/** Every way to fill one bar to which no piece can be added. */
function allPatterns({ capacity, weights, demand }: Cutting): number[][] {
  const found: number[][] = [];
  const fill = (k: number, room: number, counts: number[]): void => {
    if (k === weights.length) {
      const full = weights.every((w, i) => counts[i] === demand[i] || w > room);
      if (full) found.push(counts);
      return;
    }
    for (let n = 0; n <= demand[k] && n * weights[k] <= room; n++) fill(k + 1, room - n * weights[k], [...counts, n]);
  };
  fill(0, capacity, []);
  return found;
}

test('integer programme over every pattern, solved by HiGHS: 15 seeded roofs where the cheap plans miss the bound', async () => {
  const highs = await loadHighs();
  const roll = dice(12);
  for (let cases = 0; cases < 15; ) {
    const kinds = Array.from({ length: 9 }, () => 500 + roll(2300));
    const sizes = Array.from({ length: 36 }, () => kinds[roll(kinds.length)]);
    const cutting = onGrid(sizes, 4200, 3);
    const cheap = Math.min(...[bestFit, tightFill].map((fill) => fill(cutting, cutting.demand, plenty()).length));
    if (cheap === worthsL2(cutting).bars) continue;
    cases++;
    const patterns = allPatterns(cutting);
    const names = patterns.map((_, p) => `x${p}`);
    const rows = cutting.demand.map((pieces, k) => {
      const terms = patterns.flatMap((counts, p) => (counts[k] > 0 ? [`${counts[k]} x${p}`] : []));
      return `r${k}: ${terms.join(' + ')} >= ${pieces}`;
    });
    const text = `Minimize\nbars: ${names.join(' + ')}\nSubject To\n${rows.join('\n')}\nGeneral\n${names.join(' ')}\nEnd`;
    const { ObjectiveValue } = highs.solve(text);
    const got = cutStock({ binCapacity: 4200, sizes, kerf: 3 });
    expect(got.count).toBe(Math.round(ObjectiveValue));
    expect(got.proven).toBe(true);
  }
}, 30_000);
