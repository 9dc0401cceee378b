import { expect, test } from 'vitest';
import type { RoofPlane, UV } from '../roof/types.ts';
import { houseSize, zoneOf, zoneWidths } from './edgeZones.ts';

const flat = (kinds: readonly string[]) => {
  const outline: UV[] = [
    [0, 0],
    [12, 0],
    [12, 10],
    [0, 10],
  ];
  return {
    pitchDeg: 0,
    edges: outline.map((from, k) => ({ kind: kinds[k], from, to: outline[(k + 1) % 4] })),
  } as unknown as RoofPlane;
};
const roof = flat(['eave', 'verge', 'ridge', 'verge']);
const patch = (fromU: number, fromV: number, sizeM = 1) => ({ fromU, toU: fromU + sizeM, fromV, toV: fromV + sizeM });
const TWO = { edgeM: 2, cornerM: 2 };

test('zones of a 12 by 10 m roof with strips of 2 m', () => {
  expect(zoneOf(patch(5, 4), roof, TWO)).toBe('interior');
  expect(zoneOf(patch(5, 1.5), roof, TWO)).toBe('edge');
  expect(zoneOf(patch(5, 7.5), roof, TWO)).toBe('edge');
  expect(zoneOf(patch(10.5, 1.5), roof, TWO)).toBe('corner');
  // touching the strip by its far end is enough; lying on its border is not
  expect(zoneOf(patch(9.5, 4), roof, TWO)).toBe('edge');
  expect(zoneOf(patch(9, 4), roof, TWO)).toBe('interior');
});

test('eave and ridge of a narrow plane meet at no corner', () => {
  expect(zoneOf({ fromU: 5, toU: 6, fromV: 0, toV: 10 }, roof, TWO)).toBe('edge');
});

test('a valley is no edge', () => {
  expect(zoneOf(patch(10.5, 4), flat(['eave', 'valley', 'ridge', 'verge']), TWO)).toBe('interior');
  expect(zoneOf(patch(10.5, 1), flat(['eave', 'valley', 'ridge', 'verge']), TWO)).toBe('edge');
});

test('corners of EN 1991-1-4 are e/10 deep and e/4 long, on either edge', () => {
  const en = { edgeM: 1, cornerM: 2.5 };
  expect(zoneOf(patch(9.7, 0.2, 0.5), roof, en)).toBe('corner');
  expect(zoneOf(patch(11.2, 1.8, 0.5), roof, en)).toBe('corner');
  expect(zoneOf(patch(10, 1.2, 0.5), roof, en)).toBe('interior');
});

test('widths: AS/NZS 2.0 m, EN e/10 of min(12, 2·5), ASCE 7 at least 0.914 m', () => {
  const house = { breadthM: 12, depthM: 10 };
  expect(zoneWidths('AS/NZS 1170.2', house, 5).edgeM).toBe(2);
  expect(zoneWidths('AS/NZS 1170.2', house, 1.5).edgeM).toBe(1.5);
  expect(zoneWidths('EN 1991-1-4', house, 5)).toMatchObject({ edgeM: 1, cornerM: 2.5 });
  expect(zoneWidths('ASCE 7', house, 5).edgeM).toBe(1);
  expect(zoneWidths('ASCE 7', { breadthM: 12, depthM: 7 }, 5).edgeM).toBe(0.914);
  // no height: the widest it can be
  expect(zoneWidths('AS/NZS 1170.2', house).edgeM).toBe(2);
});

test('a house is every plane that touches in plan, and the far side of a ridge even where it was not surveyed', () => {
  const plane = (id: string, e: number, n: number, w: number, d: number, ridge: string) =>
    ({
      id,
      along: [1, 0, 0],
      outline3d: [
        [e, n, 3],
        [e + w, n, 3],
        [e + w, n + d, 5],
        [e, n + d, 5],
      ],
      edges: [{ side: 'eave' }, { side: 'right' }, { side: 'ridge', kind: ridge }, { side: 'left' }],
    }) as unknown as RoofPlane;
  const south = plane('s', 0, 0, 12, 5, 'ridge');
  expect(houseSize(south, [south])).toEqual({ breadthM: 12, depthM: 10 });
  const leanTo = plane('l', 0, 0, 12, 3, 'wall');
  expect(houseSize(leanTo, [leanTo])).toEqual({ breadthM: 12, depthM: 3 });
  const wing = plane('w', 12, 0, 6, 5, 'ridge');
  const shed = plane('shed', 30, 0, 6, 5, 'ridge');
  expect(houseSize(south, [south, wing, shed])).toEqual({ breadthM: 18, depthM: 10 });
});
