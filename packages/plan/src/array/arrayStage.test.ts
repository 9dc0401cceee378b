import { type Job, kestrelRise } from '@eaveline/job';
import { expect, test } from 'vitest';
import type { WorkedPlan } from '../plan.ts';
import { roofStage } from '../roof/index.ts';
import { siteStage } from '../site/index.ts';
import { sunStage } from '../sun/index.ts';
import { arrayStage } from './index.ts';

function arrayOf(job: Job) {
  const site = siteStage.run(siteStage.view(job), {}, {});
  const sun = sunStage.run({}, { site } as WorkedPlan, {});
  const roof = roofStage.run(roofStage.view(job), { sun } as WorkedPlan, {});
  return arrayStage.run(arrayStage.view(job), { roof } as WorkedPlan, {});
}

const array = arrayOf(kestrelRise);

test('Kestrel Rise: 26 modules named by plane, row and place, 26 × 430 = 11 180 W', () => {
  expect(array.modules).toHaveLength(26);
  expect(new Set(array.modules.map(({ name }) => name)).size).toBe(26);
  expect(array.modules.map(({ name }) => name)).toContain('N1·7');
  expect(array.stcW).toBe(11180);
  expect(array.modules.some(({ overlaps }) => overlaps !== undefined)).toBe(false);
});

test('its rails: 8158, 5850, 5850, 2388, 5850 and 2388 mm, two of each, 60.968 m in all', () => {
  // frames 7, 5, 5, 2, 5 and 2 wide: n · 1134 + (n − 1) · 20, and 50 mm past them on both sides
  const lengths = array.rails.map(({ lengthMm }) => Math.round(lengthMm));
  expect(lengths).toEqual([8158, 8158, 5850, 5850, 5850, 5850, 2388, 2388, 5850, 5850, 2388, 2388]);
  expect(array.rows.find(({ name }) => name === 'N1')?.railIds).toEqual(['north-1-lower', 'north-1-upper']);
  // 26 · 21.5 + 26 · 1.9 + 60.968 m · 1.1 = 559 + 49.4 + 67.0648
  expect(array.massKg).toBeCloseTo(675.4648, 6);
});

test('the second north row ends 120 mm short of the ring kept clear round the flue', () => {
  // flue at 6.36 + 0.075 + 0.6 = 7.035; the row begins at 7.155
  const nearest = array.modules.find(({ name }) => name === 'N2·1')?.obstruction;
  expect(nearest?.name).toBe('flue');
  expect(nearest?.roomM).toBeCloseTo(0.12, 9);
});

test('on the west plane, whose rafter spacing nobody took, the feet are nominal and say so', () => {
  const onRafters = (plane: string) =>
    array.rails.filter(({ planeId }) => planeId === plane).map((rail) => rail.onRafters);
  expect(onRafters('west').some(Boolean)).toBe(false);
  expect(onRafters('north').every(Boolean)).toBe(true);
  const { feet = [] } = array.rails.find(({ id }) => id === 'north-1-lower') ?? {};
  // rafters stand at 0.3 + 0.6 · (k − 1)
  for (const { u, rafter = Number.NaN } of feet) expect(u).toBeCloseTo(0.3 + 0.6 * (rafter - 1), 9);
  for (const [k, foot] of feet.slice(1).entries()) expect(foot.u - (feet[k]?.u ?? 0)).toBeLessThanOrEqual(1.2 + 1e-9);
});

test('without mounting there are modules and rows, no rails, and the stage says why', () => {
  const bare = structuredClone(kestrelRise);
  delete bare.choices.mounting;
  const { rails, rows, modules, leavesOut } = arrayOf(bare);
  expect(rails).toEqual([]);
  expect(rows.every(({ railIds }) => railIds.length === 0)).toBe(true);
  expect(modules).toHaveLength(26);
  expect(leavesOut.at(-1)).toContain('No mounting is chosen');
});

test('a row moved up by half a module lies on the row above, and both say so', () => {
  const moved = structuredClone(kestrelRise);
  const row = moved.choices.rows['north-1'];
  if (!row) throw new Error('Kestrel Rise has a row north-1');
  row.vM += 0.861;
  const over = arrayOf(moved).modules.filter(({ overlaps }) => overlaps !== undefined);
  expect(over.map(({ rowId }) => rowId)).toContain('north-1');
  expect(over.map(({ rowId }) => rowId)).toContain('north-2');
});
