import { expect, test } from 'vitest';
import { type PlanePoint, planeOutline, planeToHouse } from '../roof/planeGeometry.ts';
import type { Job } from '../schema/job.ts';
import { demoJobs, kestrelRise } from './index.ts';
import { moduleCorners } from './layRows.ts';

/** Distances from a point to the edges of an outline running anticlockwise, eave first; negative outside. */
function insideByM(outline: readonly PlanePoint[], [u, v]: PlanePoint): number[] {
  return outline.map(([u0, v0], k) => {
    const [u1, v1] = outline[(k + 1) % outline.length];
    return ((u1 - u0) * (v - v0) - (v1 - v0) * (u - u0)) / Math.hypot(u1 - u0, v1 - v0);
  });
}

function placed(job: Job) {
  return Object.entries(job.choices.modules).map(([id, { rowId, place }]) => {
    const row = job.choices.rows[rowId];
    const sheet = job.choices.equipment[row.moduleSheet];
    if (sheet.kind !== 'module') throw new Error(`${row.moduleSheet} is not a module`);
    return { id, planeId: row.planeId, corners: moduleCorners(row, sheet, place) };
  });
}

/** Whether two rectangles with sides along the axes cover a common area. */
function overlap(a: readonly PlanePoint[], b: readonly PlanePoint[]): boolean {
  const [[aLeft, aLow], , [aRight, aHigh]] = a;
  const [[bLeft, bLow], , [bRight, bHigh]] = b;
  return aLeft < bRight && bLeft < aRight && aLow < bHigh && bLow < aHigh;
}

test('Kestrel Rise, by hand: slope length, hip setbacks, the ring round the flue', () => {
  const { planes } = kestrelRise.facts.roof;
  // 5.4 ÷ cos 22.5° = 5.4 ÷ 0.92388 = 5.845
  expect(planes.north.slopeLengthM).toBeCloseTo(5.845, 3);
  // upper left corner of east-1: u 2.525, v 2.072; the hip there stands at 2.072 · 5.4/5.845 = 1.914;
  // 0.611 along the eave, × 5.845/√(5.4² + 5.845²) = 0.7345 across the hip
  expect(Math.min(...insideByM(planeOutline(planes.east), [2.525, 2.072]))).toBeCloseTo(0.449, 3);
  // the north plane is seen from the north: its left eave end is the house's north-east corner, its right the north-west
  expect(planeToHouse(planes.north, [16.8, 0])[0]).toBeCloseTo(0, 9);
  expect(planeToHouse(planes.north, [0, 5.845])).toEqual([
    expect.closeTo(16.8, 9),
    expect.closeTo(10.8 - 5.4, 3),
    expect.closeTo(2.7 + 5.845 * Math.sin(Math.PI / 8), 9),
  ]);
});

test.each(demoJobs.filter((job) => job.id !== 'practice-yard').map((job) => [job.name, job] as const))(
  '%s: every module lies inside its plane with its setbacks, on no other, clear of what stands out of the roof',
  (_, job) => {
    const modules = placed(job);
    expect(modules.length).toBeGreaterThan(9);
    const { eaveM = 0, ridgeM = 0, sideM = 0 } = job.choices.setbacks;
    for (const { id, planeId, corners } of modules) {
      const outline = planeOutline(job.facts.roof.planes[planeId]);
      // four edges: eave, right, ridge, left; three where the plane ends in a point
      const keepM = outline.length === 4 ? [eaveM, sideM, ridgeM, sideM] : [eaveM, sideM, sideM];
      for (const corner of corners) {
        insideByM(outline, corner).forEach((insideM, edge) => {
          expect(insideM, `${id} at edge ${edge}`).toBeGreaterThanOrEqual(keepM[edge] - 1e-9);
        });
      }

      for (const [name, thing] of Object.entries(job.facts.roof.obstructions)) {
        if (thing.planeId !== planeId) continue;
        const halfU = thing.widthM / 2 + thing.clearM;
        const halfV = thing.depthM / 2 + thing.clearM;
        const ring: PlanePoint[] = [
          [thing.uM - halfU, thing.vM - halfV],
          [thing.uM + halfU, thing.vM - halfV],
          [thing.uM + halfU, thing.vM + halfV],
          [thing.uM - halfU, thing.vM + halfV],
        ];
        expect(overlap(corners, ring), `${id} over ${name}`).toBe(false);
      }
      const others = modules.filter((other) => other.id > id && other.planeId === planeId);
      for (const other of others) expect(overlap(corners, other.corners), `${id} on ${other.id}`).toBe(false);
    }
  },
);
