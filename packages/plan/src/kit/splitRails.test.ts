import { expect, test } from 'vitest';
import { railRuns } from '../array/railRuns.ts';
import type { Rail } from '../array/types.ts';
import { cutRails } from './cutRails.ts';
import { splitRails } from './splitRails.ts';

/** A rail from u = 0 with feet and mid clamps at places in mm. */
const rail = (id: string, v: number, lengthMm: number, feetMm: readonly number[], gapsMm: readonly number[] = []) =>
  ({
    id,
    name: id,
    rowId: 'r',
    planeId: 'p',
    v,
    fromU: 0,
    toU: lengthMm / 1000,
    lengthMm,
    feet: feetMm.map((mm, n) => ({ id: `${id}-${n}`, u: mm / 1000 })),
    clamps: gapsMm.map((mm) => ({ u: mm / 1000, kind: 'mid' })),
  }) as unknown as Rail;
const stock = { stockMm: 4200, longestRunMm: 12000 };
const feet = [400, 1600, 2800, 4000];

test('5000 mm from 4200 mm bars: the lower splice 180 mm short of the last foot, the upper one span back', () => {
  // in the span 2800 to 4000 a splice may sit at 2980 to 3196 and 3604 to 3820: the furthest is 3820.
  // the upper rail keeps 300 mm off it, to 3520: next furthest is 3196
  const { splices, pieces } = splitRails([rail('upper', 1, 5000, feet), rail('lower', 0, 5000, feet)], stock);
  expect(splices).toEqual([
    { railId: 'lower', atMm: 3820, clear: true },
    { railId: 'upper', atMm: 3196, clear: true },
  ]);
  expect(pieces.map(({ railId, lengthMm }) => [railId, lengthMm])).toEqual([
    ['lower', 3820],
    ['lower', 1180],
    ['upper', 3196],
    ['upper', 1804],
  ]);
});

test('those four pieces come from three bars, and no fewer: 10 000 mm of 4200 is more than two', () => {
  const { pieces } = splitRails([rail('upper', 1, 5000, feet), rail('lower', 0, 5000, feet)], stock);
  const { cuts, cutting } = cutRails(pieces, 4200);
  expect(cutting).toMatchObject({ bars: 3, lowerBound: 3, proven: true, kerfMm: 3 });
  // two cuts of 3 mm in the bar that gives 1804 and 1180
  expect(cuts.map((bar) => [bar.pieces.map(({ lengthMm }) => lengthMm), bar.offcutMm])).toEqual([
    [[3820], 377],
    [[3196], 1001],
    [[1804, 1180], 1210],
  ]);
  expect(cutting.wasteShare).toBeCloseTo(1 - 10000 / 12600, 12);
});

test('a rail as long as the stock needs no splice and leaves nothing, one millimetre more needs one', () => {
  expect(splitRails([rail('a', 0, 4200, feet)], stock).splices).toEqual([]);
  expect(cutRails([{ railId: 'a', railName: 'a', lengthMm: 4200 }], 4200).cuts[0]?.offcutMm).toBe(0);
  const { splices, pieces } = splitRails([rail('a', 0, 4201, feet)], stock);
  // 300 mm at least for the last piece: not beyond 3901, so in the span again
  expect(splices[0]?.atMm).toBe(3820);
  expect(pieces.every(({ lengthMm }) => lengthMm >= 300)).toBe(true);
});

test('a splice on a fraction of a millimetre leaves no piece longer than the bar', () => {
  // 8399 mm and no feet: the splice may sit from 4199 to 4200; from 4199.4 it rounds down and the rest would be 4200
  const odd = [400.4, 1600.4, 2800.4, 4199.4, 5300.4, 7900.4];
  for (let lengthMm = 8380; lengthMm <= 8400; lengthMm++) {
    const { pieces } = splitRails([rail('a', 0, lengthMm, odd)], stock);
    expect(Math.max(...pieces.map((piece) => piece.lengthMm)), `${lengthMm} mm`).toBeLessThanOrEqual(4200);
    expect(pieces.reduce((sum, piece) => sum + piece.lengthMm, 0)).toBe(lengthMm);
  }
});

test('where feet leave no place the splice goes as far as the stock reaches, and is marked', () => {
  // one span of 200 mm at the left end: a splice there would leave a piece under 300 mm
  const { splices } = splitRails([rail('a', 0, 5000, [100, 300])], stock);
  expect(splices).toEqual([{ railId: 'a', atMm: 4200, clear: false }]);
});

test('13 928 mm may not run longer than 12 000: a break at the gap nearest the middle, two runs with 20 mm between', () => {
  // twelve modules of 1134 with gaps of 20, 50 mm past them: gap k at 50 + 1134·k + 20·(k − ½)
  const gaps = Array.from({ length: 11 }, (_, k) => 50 + 1134 * (k + 1) + 20 * (k + 0.5));
  const long = rail('a', 0, 13928, [], gaps);
  expect(railRuns(long, 12000)).toEqual({
    breaksAtMm: [6964],
    runs: [
      { fromMm: 0, toMm: 6954 },
      { fromMm: 6974, toMm: 13928 },
    ],
    keepsLongest: true,
  });
  // 5000 at most: three runs, at the gaps nearest 4643 and 9285, the fourth and the eighth
  expect(railRuns(long, 5000).breaksAtMm).toEqual([4656, 9272]);
});

test('without a gap between modules there is no place to break, and it is said', () => {
  expect(railRuns(rail('a', 0, 13000, []), 12000)).toMatchObject({ breaksAtMm: [], keepsLongest: false });
  const { tooLong } = splitRails([rail('a', 0, 13000, [500, 4000, 8000, 12000])], stock);
  expect(tooLong).toEqual(['a']);
});
