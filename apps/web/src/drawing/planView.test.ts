import type { RoofPlane } from '@eaveline/plan';
import { expect, test } from 'vitest';
import { boundsOf, planView } from './planView.ts';
import { inside } from './point.ts';
import { pxPerM, scaleFor } from './scale.ts';

// north plane of a house 16.8 m wide: its eave runs from the east corner to the west as seen from in front of it
const north: Pick<RoofPlane, 'outline3d' | 'along' | 'upSlope'> = {
  outline3d: [
    [16.8, 10.8, 2.7],
    [0, 10.8, 2.7],
    [5.4, 5.4, 4.9],
    [11.4, 5.4, 4.9],
  ],
  along: [-1, 0, 0],
  upSlope: [0, -Math.cos(Math.PI / 8), Math.sin(Math.PI / 8)],
};

test('one metre at 1:100 is 10 mm of paper, 37.8 px', () => {
  expect(pxPerM(100)).toBeCloseTo(37.795, 3);
  // 16.8 m is 168 mm, 635 px: it fits 744 px at 1:100 and not at 1:75, 847 px
  expect(scaleFor({ wideM: 16.8, highM: 10.8 }, { width: 744, height: 500 })).toBe(100);
});

test('the eave of a north plane lies at the top of the drawing, its left end at the right', () => {
  const view = planView(boundsOf([north]), 100, { x: 10, y: 10, foot: 10 });
  const [x, y] = view.inPlane(north, [0, 0]);
  expect(x).toBeCloseTo(10 + 16.8 * pxPerM(100), 6);
  expect(y).toBeCloseTo(10, 6);
  // up the slope of 22.5° one metre is 0.924 m seen from above
  expect(view.inPlane(north, [0, 1])[1] - y).toBeCloseTo(0.9239 * pxPerM(100), 2);
});

test('a point is inside a polygon or not', () => {
  const square = [
    [0, 0],
    [10, 0],
    [10, 10],
    [0, 10],
  ] as const;
  expect(inside([5, 5], square)).toBe(true);
  expect(inside([15, 5], square)).toBe(false);
});
