import { clampSheetSchema, type RowChoice } from '@eaveline/job';
import { expect, test } from 'vitest';
import { module430 as sheet } from '../../test/sheets.ts';
import type { RoofPlane } from '../roof/types.ts';
import { layRails } from './layRails.ts';
import type { ArrayRow, PlacedModule } from './types.ts';

const endClamp = clampSheetSchema.parse({
  kind: 'clamp',
  name: 'End',
  place: 'end',
  gapMm: 30,
  torqueNm: 14,
  bonding: true,
});
const mounting = {
  railSheet: 'r',
  midClampSheet: 'm',
  endClampSheet: 'e',
  fixingSheet: 'f',
  railPastMm: 50,
  footSpacingMm: 1200,
  gapUnderMm: 110,
};

/** A row of modules at the given places, from u = 1 m, 0.35 m above the eave. */
function rails(places: readonly number[], choice: Partial<RowChoice> = {}, past = 50) {
  const orientation = choice.orientation ?? 'portrait';
  const [widthM, heightM] = orientation === 'portrait' ? [1.134, 1.722] : [1.722, 1.134];
  const modules = places.map((place) => ({ place, at: [1 + (place - 1) * (widthM + 0.02), 0.35], widthM, heightM }));
  const row = { id: 's-1', name: 'S1', planeId: 'south', at: [1, 0.35], heightM } as unknown as ArrayRow;
  return layRails(
    {
      row,
      choice: { planeId: 'south', row: 1, orientation, uM: 1, vM: 0.35, gapMm: 20, moduleSheet: 't', ...choice },
      sheet,
      plane: {} as RoofPlane,
      modules: modules as unknown as PlacedModule[],
    },
    { ...mounting, railPastMm: past },
    endClamp,
  );
}

test('seven in portrait: frames 7 × 1134 + 6 × 20 = 8058 mm, rails 50 mm past them on both sides, 8158 mm', () => {
  const [lower, upper] = rails([1, 2, 3, 4, 5, 6, 7]);
  expect(lower?.lengthMm).toBeCloseTo(8158, 6);
  expect(lower?.name).toBe('S1 lower');
  // middle of the zone, 20 to 30 % of 1722 mm from either end: 430.5 and 1291.5 mm
  expect(lower?.zoneMm.map(Math.round)).toEqual([344, 517]);
  expect(lower?.fromModuleEdgeMm).toBeCloseTo(430.5, 9);
  expect(upper?.fromModuleEdgeMm).toBeCloseTo(1291.5, 9);
  expect(upper?.v).toBeCloseTo(0.35 + 1.2915, 9);
  // 7 modules: 2 end clamps, 6 mid clamps in the middles of the gaps, the first at 1 + 1.134 + 0.010
  expect(lower?.clamps.map(({ kind }) => kind)).toEqual(['end', ...Array(6).fill('mid'), 'end']);
  expect(lower?.clamps[1]?.u).toBeCloseTo(2.144, 12);
});

test('a rail chosen to end 10 mm past the frame still reaches under the 30 mm end clamp', () => {
  expect(rails([1, 2], {}, 10)[0]?.lengthMm).toBeCloseTo(2 * 1134 + 20 + 60, 6);
});

test('a place left out gets end clamps on both sides of it, and the rail runs through', () => {
  const [lower] = rails([1, 2, 4]);
  expect(lower?.clamps.map(({ kind }) => kind)).toEqual(['end', 'mid', 'end', 'end', 'end']);
  expect(lower?.lengthMm).toBeCloseTo(4 * 1134 + 3 * 20 + 100, 6);
});

test('rails chosen outside the zone are seen: 300 mm from the edge is short of 344', () => {
  const [lower, upper] = rails([1, 2], { railsMm: [300, 1300] });
  expect([lower?.inZone, upper?.inZone]).toEqual([false, true]);
  expect(lower?.v).toBeCloseTo(0.65, 12);
});

test('in landscape the sheet says nothing of the side the rails cross: not in zone, and known to be unknown', () => {
  const both = rails([1, 2], { orientation: 'landscape' });
  expect(both.map(({ zoneKnown, inZone }) => [zoneKnown, inZone])).toEqual([
    [false, false],
    [false, false],
  ]);
});
