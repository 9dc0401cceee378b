import type { SiteFacts } from '@eaveline/job';
import { expect, test } from 'vitest';
import type { ENU } from '../roof/types.ts';
import type { SunPlan } from '../sun/types.ts';
import { nearShade } from './nearShade.ts';
import { SUNS_A_STEP, sunPath } from './sunPath.ts';

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
  // the sun stands still through each step
  const column = (of: (a: number, e: number) => number) =>
    Float64Array.from({ length: suns.length * SUNS_A_STEP }, (_, k) => {
      const [azimuth, elevation] = suns[Math.floor(k / SUNS_A_STEP)] ?? [0, 0];
      return of(azimuth * rad, elevation * rad);
    });
  const path = {
    east: column((a, e) => Math.sin(a) * Math.cos(e)),
    north: column((a, e) => Math.cos(a) * Math.cos(e)),
    up: column((_, e) => Math.sin(e)),
  };
  const lit = new Float64Array(suns.length).fill(1);
  return [...(nearShade(point, objects, path, lit) ?? lit)];
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
  ).toEqual([expect.closeTo(0.3, 12), expect.closeTo(0.3, 12)]);
  const south = {
    east: new Float64Array(SUNS_A_STEP),
    north: new Float64Array(SUNS_A_STEP).fill(-1),
    up: new Float64Array(SUNS_A_STEP),
  };
  expect(nearShade([0, 0, 0], [object('tree', {})], south, Float64Array.of(1))).toBeUndefined();
});

test('a pole that the sun passes within the hour takes its share of it', () => {
  // hours of 15° on the horizon at −15°, 0° and 15°: inside the middle one the sun stands at about ±1.25°, ±3.75°, ±6.25°;
  // a pole 3 m off and 0.3 m wide hides 2.87° to a side: two of six
  const at = (degrees: number[], of: (x: number) => number) =>
    Float64Array.from(degrees, (x) => of((x * Math.PI) / 180));
  const hours = [-15, 0, 15];
  const sun = {
    steps: 3,
    stepS: 3600,
    sunTimeMs: Float64Array.of(0, 3.6e6, 7.2e6),
    east: at(hours, Math.sin),
    north: at(hours, Math.cos),
    up: new Float64Array(3),
  } as unknown as SunPlan;
  const pole = object('pole', { northM: 3, heightM: 5, widthM: 0.3, transmission: 0 });
  const open = nearShade([0, 0, 3], [pole], sunPath(sun), Float64Array.of(1, 1, 1));
  expect([...(open ?? [])]).toEqual([1, expect.closeTo(4 / 6, 12), 1]);
  // the same rows from three different days: each sun stands still, and the middle one is hidden whole
  const apart = { ...sun, sunTimeMs: Float64Array.of(0, 9e9, 3e9) };
  expect([...(nearShade([0, 0, 3], [pole], sunPath(apart), Float64Array.of(1, 1, 1)) ?? [])]).toEqual([1, 0, 1]);
});
