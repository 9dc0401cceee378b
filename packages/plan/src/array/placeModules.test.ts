import { type PlaneFacts, planeFactsSchema, type RowChoice } from '@eaveline/job';
import { expect, test } from 'vitest';
import { module430 as sheet } from '../../test/sheets.ts';
import { planeShape } from '../roof/planeShape.ts';
import type { PlaneSun, RoofPlane } from '../roof/types.ts';
import { findOverlaps, placeModule } from './placeModules.ts';

const row: RowChoice = {
  planeId: 'south',
  row: 1,
  orientation: 'portrait',
  uM: 1,
  vM: 0.35,
  gapMm: 20,
  moduleSheet: 'test',
};
const facts: PlaneFacts = planeFactsSchema.parse({
  name: 'South',
  facingDeg: 180,
  pitchDeg: 30,
  eaveLengthM: 12,
  slopeLengthM: 5,
  ridgeFromM: 5,
  ridgeToM: 7,
  eaveLeft: { eastM: 0, northM: 0, heightM: 3 },
  edges: { left: 'hip', right: 'hip' },
  covering: 'slate',
});

function roof(over: Partial<RoofPlane> = {}): RoofPlane {
  const shape = planeShape(facts, { eaveM: 0, ridgeM: 0, sideM: 0 }, 'plane');
  return {
    ...shape,
    id: 'south',
    name: 'South',
    letter: 'S',
    facingDeg: 180,
    pitchDeg: 30,
    usableAreaM2: shape.areaM2,
    obstructions: [],
    sun: {} as PlaneSun,
    ...over,
  };
}

const place = (n: number, over: Partial<RowChoice> = {}, plane = roof()) =>
  placeModule(`s-1-${n}`, { rowId: 's-1', place: n, unitId: 'u', input: 1 }, { ...row, ...over }, sheet, plane, facts);

test('third place of a portrait row stands two widths and two gaps along', () => {
  // 1 + 2·(1.134 + 0.020) = 3.308; middle 3.308 + 0.567, 0.35 + 0.861
  const third = place(3);
  expect(third.name).toBe('S1·3');
  expect(third.at[0]).toBeCloseTo(3.308, 12);
  expect(third.centre[0]).toBeCloseTo(3.875, 12);
  expect(third.centre[1]).toBeCloseTo(1.211, 12);
  // south plane at 30°: east = u, north = v·cos 30° = 1.0488, up = 3 + v·sin 30° = 3.6055
  expect(third.centre3d[0]).toBeCloseTo(3.875, 12);
  expect(third.centre3d[1]).toBeCloseTo(1.0488, 4);
  expect(third.centre3d[2]).toBeCloseTo(3.6055, 12);
});

test('landscape swaps width and height', () => {
  const laid = place(2, { orientation: 'landscape' });
  expect(laid.at[0]).toBeCloseTo(1 + 1.742, 12);
  expect([laid.widthM, laid.heightM]).toEqual([1.722, 1.134]);
});

test('room to eave, ridge and a 45° hip, the hip crossed by the upper left corner', () => {
  // eave 0.35; ridge 5 − 2.072 = 2.928; the left hip runs u = v: upper left corner (1, 2.072) lies (1 − 2.072)/√2 = −0.758 over it
  const { clear } = place(1);
  expect(clear.eave).toBeCloseTo(0.35, 12);
  expect(clear.ridge).toBeCloseTo(2.928, 12);
  expect(clear.side).toBeCloseTo(-0.758, 3);
  // moved to u = 4: (4 − 2.072)/√2 = 1.363; the right hip is farther
  expect(place(1, { uM: 4 }).clear.side).toBeCloseTo(1.363, 3);
});

test('a flue kept clear: beside, above, at the corner and inside', () => {
  const flue = { id: 'flue', kind: 'flue', name: 'flue', widthM: 0.15, depthM: 0.15, heightM: 0.9, clearM: 0.6 };
  const roomM = (u: number, v: number) =>
    place(1, {}, roof({ obstructions: [{ ...flue, centre: [u, v] }] })).obstruction?.roomM;
  // module 1 … 2.134 by 0.35 … 2.072; the zone reaches 0.675 from the flue's middle
  expect(roomM(2.9, 1)).toBeCloseTo(2.9 - 0.675 - 2.134, 12);
  expect(roomM(1.5, 3)).toBeCloseTo(3 - 0.675 - 2.072, 12);
  // 0.3 across and 0.4 up make 0.5
  expect(roomM(2.134 + 0.675 + 0.3, 2.072 + 0.675 + 0.4)).toBeCloseTo(0.5, 12);
  // 0.1 m inside the zone's left side
  expect(roomM(2.134 + 0.575, 1)).toBeCloseTo(-0.1, 12);
  expect(place(1).obstruction).toBeUndefined();
});

test('two rows laid 10 mm into each other overlap; frame against frame does not', () => {
  const [a, touching, into] = [place(1), place(1, { vM: 0.35 + 1.722 }), place(1, { vM: 0.35 + 1.712 })].map(
    (one, k) => ({
      ...one,
      id: `m${k}`,
    }),
  );
  if (!a || !touching || !into) throw new Error('three modules were placed');
  expect(findOverlaps([a, touching]).map((one) => one.overlaps)).toEqual([undefined, undefined]);
  expect(findOverlaps([a, into]).map((one) => one.overlaps)).toEqual(['m2', 'm0']);
});
