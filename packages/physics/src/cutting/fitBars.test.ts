import { expect, test } from 'vitest';
import fixture from '../../fixtures/elec-cutting.json' with { type: 'json' };
import { bestFit, firstFit, tightFill } from './fitBars.ts';
import { onGrid } from './onGrid.ts';

const plenty = () => ({ left: 1e9 });

test.each(fixture.instances)('$name: first-fit decreasing takes $firstFitDecreasingBins bars, as published', (row) => {
  const cutting = onGrid(row.sizes, row.binCapacity, 0);
  expect(firstFit(cutting, cutting.demand, plenty())).toHaveLength(row.firstFitDecreasingBins);
});

test.each([firstFit, bestFit, tightFill])('%o cuts every piece once and overfills no bar', (fill) => {
  for (const { sizes, binCapacity } of fixture.instances) {
    const cutting = onGrid(sizes, binCapacity, 0);
    const cut = cutting.demand.map(() => 0);
    for (const { classes, counts } of fill(cutting, cutting.demand, plenty())) {
      for (const [at, k] of classes.entries()) cut[k] += counts[at];
      const sum = classes.reduce((used, k, at) => used + cutting.weights[k] * counts[at], 0);
      expect(sum).toBeLessThanOrEqual(cutting.capacity);
    }
    expect(cut).toEqual(cutting.demand);
  }
});

test('by hand: 6, 5, 3, 3, 2 from bars of 10', () => {
  const cutting = onGrid([6, 5, 3, 3, 2], 10, 0);
  const lengths = (bars: ReturnType<typeof firstFit>) =>
    bars.map(({ classes, counts }) =>
      classes.flatMap((k, at) => new Array<number>(counts[at]).fill(cutting.weights[k])),
    );
  // 3 beside the 6, the other 3 beside the 5, the 2 into the first bar with room: none in 6 + 3, so the second
  expect(lengths(firstFit(cutting, cutting.demand, plenty()))).toEqual([
    [6, 3],
    [5, 3, 2],
  ]);
  // the tightest round the 6 leaves 1 as 6 + 3; then 5 + 3 + 2 is full
  expect(lengths(tightFill(cutting, cutting.demand, plenty()))).toEqual([
    [6, 3],
    [5, 3, 2],
  ]);
});

test('best fit takes the bar with the least room that is enough, first fit the first', () => {
  const cutting = onGrid([9, 7, 4, 1], 12, 0);
  const bars = (fill: typeof firstFit) => fill(cutting, cutting.demand, plenty()).map(({ classes }) => [...classes]);
  // 9 leaves 3; 7 + 4 leaves 1. The 1 goes beside the 9 by first fit, and fills the second bar by best fit
  expect(bars(firstFit)).toEqual([
    [0, 3],
    [1, 2],
  ]);
  expect(bars(bestFit)).toEqual([[0], [1, 2, 3]]);
});
