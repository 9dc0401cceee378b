import type { SiteFacts } from '@eaveline/job';
import { expect, test } from 'vitest';
import type { ENU } from '../roof/types.ts';
import type { SunPlan } from '../sun/types.ts';
import { nearShade } from './nearShade.ts';

type SiteObject = SiteFacts['objects'][string];

const object = (kind: SiteObject['kind'], over: Partial<SiteObject>): SiteObject => ({
  kind,
  name: kind,
  eastM: 0,
  northM: 10,
  baseM: 0,
  heightM: 9,
  widthM: 4,
  transmission: 0,
  ...over,
});

/** What passes from a point towards suns at the given azimuths and elevations, degrees. */
function passes(point: ENU, objects: readonly SiteObject[], suns: readonly (readonly [number, number])[]): number[] {
  const rad = Math.PI / 180;
  const column = (of: (a: number, e: number) => number) => Float64Array.from(suns, ([a, e]) => of(a * rad, e * rad));
  const sun = {
    steps: suns.length,
    east: column((a, e) => Math.sin(a) * Math.cos(e)),
    north: column((a, e) => Math.cos(a) * Math.cos(e)),
    up: column((_, e) => Math.sin(e)),
  } as SunPlan;
  return [
    ...(nearShade(point, objects, sun, new Float64Array(suns.length).fill(1)) ?? new Float64Array(suns.length).fill(1)),
  ];
}

test('a tree 9 m high and 4 m wide, 10 m north, seen from the ground: up to 43.15°', () => {
  // halved by its half axes the middle stands at (5, 1): 11.31° up, and the unit circle there is 11.31° to the tangent;
  // tan 22.62° = 5/12, back in metres × 4.5/2: tan e = 0.9375
  expect(
    passes(
      [0, 0, 0],
      [object('tree', {})],
      [
        [0, 1],
        [0, 43],
        [0, 43.3],
        [180, 20],
      ],
    ),
  ).toEqual([0, 0, 1, 1]);
});

test('the same tree from half its height: 11.54° to either side, asin(2/10)', () => {
  const suns = [
    [11.5, 0],
    [-11.5, 0],
    [11.6, 0],
  ] as const;
  expect(passes([0, 0, 4.5], [object('tree', {})], suns)).toEqual([0, 0, 1]);
});

test('a pole of 0.3 m, 3 m off, 5 m high, seen from 3 m: 2.87° to either side, and up to atan(2/2.85) = 35.06°', () => {
  const pole = object('pole', { northM: 3, heightM: 5, widthM: 0.3 });
  const suns = [
    [2.8, 10],
    [2.9, 10],
    [0, 35],
    [0, 35.2],
    [0, -40],
  ] as const;
  expect(passes([0, 0, 3], [pole], suns)).toEqual([0, 1, 0, 1, 0]);
});

test('a building 4 m wide and 6 m high, its near face 8 m off, seen from 3 m: up to atan(3/8) = 20.56°, 14.04° to a side', () => {
  const house = object('building', { heightM: 6 });
  const suns = [
    [0, 20.5],
    [0, 20.6],
    [14, 0],
    [14.1, 0],
  ] as const;
  expect(passes([0, 0, 3], [house], suns)).toEqual([0, 1, 0, 1]);
});

test('what passes two trees in a row is the product of what each lets through', () => {
  const row = [object('tree', { transmission: 0.5 }), object('tree', { northM: 20, transmission: 0.25 })];
  expect(
    passes([0, 0, 4.5], row, [
      [0, 0],
      [90, 0],
    ]),
  ).toEqual([0.125, 1]);
});

test('a point inside a crown sees every sun through it; with nothing in the way there is no column at all', () => {
  const around = object('tree', { northM: 0, transmission: 0.3 });
  expect(
    passes(
      [0, 0, 4.5],
      [around],
      [
        [0, 80],
        [200, 5],
      ],
    ),
  ).toEqual([0.3, 0.3]);
  const sun = {
    steps: 1,
    east: Float64Array.of(0),
    north: Float64Array.of(-1),
    up: Float64Array.of(0),
  } as unknown as SunPlan;
  expect(nearShade([0, 0, 0], [object('tree', {})], sun, Float64Array.of(1))).toBeUndefined();
});
