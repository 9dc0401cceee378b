import { expect, test } from 'vitest';
import type { Job } from '../schema/job.ts';
import { demoJobs } from './index.ts';

const each = demoJobs.map((job) => [job.name, job] as const);

test('five jobs, three regions, every sort of supply', () => {
  expect(demoJobs.map(({ id }) => id)).toEqual([
    'kestrel-rise',
    'larkspur-lane',
    'quayside-terrace',
    'ironbark-clinic',
    'practice-yard',
  ]);
  expect(new Set(demoJobs.map(({ choices }) => choices.rules.pack))).toEqual(new Set(['au-nz', 'us', 'iec-eu']));
  expect(new Set(demoJobs.map(({ facts }) => facts.supply.system)).size).toBe(3);
  expect(demoJobs.map(({ choices }) => Object.keys(choices.modules).length)).toEqual([26, 18, 10, 96, 16]);
  expect(demoJobs.every(({ invented }) => invented)).toBe(true);
});

test.each(each)('%s has the facts the sums need', (_, { facts, choices }) => {
  const { site, supply, board, loads } = facts;
  for (const fact of [site.recordLowC, site.recordHighC, site.wind.basicSpeedMS, site.wind.roofHeightM]) {
    expect(fact).toBeTypeOf('number');
  }
  for (const fact of [supply.loopOhm, supply.prospectiveA, supply.mains.lengthM]) expect(fact).toBeTypeOf('number');
  for (const fact of [board.busA, board.mainSwitchA, board.breakingKA, board.freeWays, board.breakerSumA]) {
    expect(fact).toBeTypeOf('number');
  }
  expect(board.wiring).toBeDefined();
  expect(loads.annualKwh).toBeTypeOf('number');
  expect(loads.dayShape).toHaveLength(24);
  expect(choices.backup && choices.mounting).toBeDefined();
});

/**
 * Largest current of a dead short, A: voltage over loop; three lines together give about twice one
 * (common practice, no source). The loop to earth stands in for the loop to neutral, hence the wide band.
 */
function shortA({ facts: { supply } }: Job): number {
  return ((supply.system === 'three-phase' ? 2 : 1) * supply.nominalV) / (supply.loopOhm ?? Number.NaN);
}

test.each(each)('%s: loop and prospective current tell of the same supply', (_, job) => {
  const ratio = (job.facts.supply.prospectiveA ?? 0) / shortA(job);
  expect(ratio).toBeGreaterThan(0.75);
  expect(ratio).toBeLessThan(1.25);
});

test.each(each.filter(([name]) => name !== 'Practice yard'))(
  '%s: plan width over cosine of pitch is the slope length, within 1 %%',
  (_, { facts }) => {
    for (const plane of Object.values(facts.roof.planes)) {
      const byPlanM = (plane.planWidthM ?? 0) / Math.cos((plane.pitchDeg * Math.PI) / 180);
      expect(Math.abs(plane.slopeLengthM / byPlanM - 1), plane.name).toBeLessThan(0.01);
    }
  },
);
