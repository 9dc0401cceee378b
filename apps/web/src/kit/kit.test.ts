import type { KitLine, Plan } from '@eaveline/plan';
import { expect, test } from 'vitest';
import { barSubjects } from './barSubjects.ts';
import { boundWords, headOfKit } from './headOfKit.ts';

const cutting = { bars: 3, lowerBound: 3, proven: true, wasteShare: 0.1, kerfMm: 3, method: 'by hand' };

test('what is left of a bar: 4 200 less 3 644, less 511, less two saw cuts of 3 mm is 39', () => {
  const piece = (railName: string, lengthMm: number) => ({ railId: railName, railName, lengthMm });
  const cut = { bar: 9, stockMm: 4200, pieces: [piece('E1 upper', 3644), piece('N1 upper', 511)], offcutMm: 39 };
  const [bar] = barSubjects({ cuts: [cut], cutting });
  expect(bar?.ledger?.lines.map(({ value }) => value)).toEqual(['4\u202f200 mm', '556', '45', '39']);
  expect(bar?.working?.inputs?.map(({ value }) => value)).toEqual([4200, 3644, 511, 6]);
});

test('the bound is said as it is: reached, or open in between', () => {
  expect(boundWords(cutting)).toBe('Three bars of rail: no cutting does with fewer.');
  expect(boundWords({ ...cutting, bars: 5, proven: false })).toBe(
    'Five bars of rail. Fewer than three bars cannot do; in between nothing is proven.',
  );
});

test('nobody orders before what stops the job is mended', () => {
  const plan = (stops: number) =>
    ({
      kit: { lines: [{} as KitLine], cutting: { ...cutting, bars: 0 } },
      checks: { findings: Array.from({ length: stops }, () => ({ state: 'fails', stops: true })) },
    }) as unknown as Plan;
  expect(headOfKit(plan(0))).toEqual({
    sentence: 'One line to order. Nothing stands in the way.',
    quiet: 'No rail is cut.',
  });
  expect(headOfKit(plan(1)).sentence).toBe('One line to order. Order after the mend.');
  expect(headOfKit(plan(3)).sentence).toBe('One line to order. Order after the three mends.');
});
