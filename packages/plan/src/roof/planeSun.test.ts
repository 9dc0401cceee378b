import { expect, test } from 'vitest';
import type { Climate, SitePlan } from '../site/types.ts';
import { sunStage } from '../sun/index.ts';
import { horizonElevation } from './horizonElevation.ts';
import { planeLight } from './planeSun.ts';

const months = (value: number) => Array.from({ length: 12 }, () => value);
const GHI = [6.9, 6.1, 4.8, 3.3, 2.2, 1.7, 1.9, 2.6, 3.7, 5.0, 6.1, 6.8];
const climate: Climate = {
  kind: 'monthly normals',
  name: 'hand-made',
  places: [],
  distanceKm: 0,
  far: false,
  quality: '',
  annualSd: 0.05,
  ghiKwhM2Day: GHI,
  meanC: months(14),
  credit: 'made up for this test',
  remarks: [],
  normals: { ghiKwhM2Day: GHI, meanC: months(14), dayMaxC: months(19), dayMinC: months(9), windMS: months(3) },
};
const site = {
  latitudeDeg: -37.6,
  longitudeDeg: 143.9,
  elevationM: 430,
  zone: 'Australia/Melbourne',
  climate,
} as SitePlan;
const sun = sunStage.run({}, { site }, {});

test('a level plane gets what the level ground gets', () => {
  // the sky over a level plane is all of the diffuse; only suns within 5° of the horizon make a difference
  const level = planeLight(sun, undefined)(0, 0);
  expect(Math.abs(level.annualBareKwhM2 / sun.annualGhiKwhM2 - 1)).toBeLessThan(0.003);
  // plain glass keeps about 95 to 97 % of a year’s light on the level
  expect(level.annualKwhM2 / level.annualBareKwhM2).toBeGreaterThan(0.93);
  expect(level.annualKwhM2 / level.annualBareKwhM2).toBeLessThan(0.98);
});

test('south of the equator the north plane gains on the level and the south plane loses', () => {
  const light = planeLight(sun, undefined);
  const [north, east, south] = [0, 90, 180].map((facing) => light(22.5, facing).annualBareKwhM2);
  expect(north).toBeGreaterThan(1.05 * sun.annualGhiKwhM2);
  expect(east).toBeLessThan(sun.annualGhiKwhM2);
  expect(south).toBeLessThan(0.9 * sun.annualGhiKwhM2);
});

test('months add up to the year, and each hour is its beam and its diffuse', () => {
  const { beam, diffuse, monthlyKwhM2, annualKwhM2 } = planeLight(sun, undefined)(22.5, 0);
  let sum = 0;
  for (let i = 0; i < sun.steps; i++) sum += (beam[i] as number) + (diffuse[i] as number);
  expect(annualKwhM2).toBeCloseTo(sum / 1000, 9);
  expect(monthlyKwhM2.reduce((all, one) => all + one, 0)).toBeCloseTo(annualKwhM2, 9);
});

test('behind a horizon of 90° nothing is left of sun and sky, and all of the ground', () => {
  const open = planeLight(sun, undefined)(22.5, 0);
  const walled = planeLight(sun, horizonElevation([{ azimuthDeg: 0, elevationDeg: 90 }]))(22.5, 0);
  expect(walled.beam.every((watts) => watts === 0)).toBe(true);
  // the rim is as high as it can be: what is left of the sky is rounding
  const ground = open.diffuse.map((watts, i) => watts - (open.sky[i] as number));
  for (let i = 0; i < sun.steps; i++) expect(walled.diffuse[i]).toBeCloseTo(ground[i] as number, 9);
  expect(walled.annualBareKwhM2).toBe(open.annualBareKwhM2);
});

test('under a level horizon of 20° the beam is whole above it and gone below', () => {
  const open = planeLight(sun, undefined)(22.5, 0);
  const hills = planeLight(sun, horizonElevation([{ azimuthDeg: 120, elevationDeg: 20 }]))(22.5, 0);
  let hidden = 0;
  for (let i = 0; i < sun.steps; i++) {
    const below = (sun.zenithDeg[i] as number) > 70;
    expect(hills.beam[i]).toBe(below ? 0 : open.beam[i]);
    if (below && (open.beam[i] as number) > 0) hidden++;
  }
  // about an hour and a half at either end of each day
  expect(hidden).toBeGreaterThan(600);
});

test('the horizon runs straight between its points, round through north', () => {
  // 350° at 10° and 10° at 20°: north lies half way, 15°; east is far round: from 10° to 350° in 340°, a degree down each 34°
  const heights = horizonElevation([
    { azimuthDeg: 350, elevationDeg: 10 },
    { azimuthDeg: 10, elevationDeg: 20 },
  ]);
  expect(heights?.[0]).toBeCloseTo(15, 12);
  expect(heights?.[360]).toBeCloseTo(15, 12);
  expect(heights?.[180]).toBeCloseTo(15, 12);
  expect(heights?.[44]).toBeCloseTo(19, 12);
  expect(horizonElevation([])).toBeUndefined();
});
