import type { Job } from '@eaveline/job';
import { expect, test } from 'vitest';
import { eighteenModuleHouse } from '../../test/eighteenModuleHouse.ts';
import { arrayStage } from '../array/index.ts';
import type { BackupPlan } from '../backup/types.ts';
import { boardStage } from '../board/index.ts';
import { roofStage } from '../roof/index.ts';
import { siteStage } from '../site/index.ts';
import { sunStage } from '../sun/index.ts';
import { trunksStage } from '../trunks/index.ts';
import { testsStage } from './index.ts';

const noBackup: BackupPlan = {
  present: false,
  lines: [],
  circuits: [],
  byLine: [],
  starts: [],
  usableKwh: 0,
  reserve: 0,
  leftDark: [],
  solarOnBackupVA: 0,
  islandTrips: [],
  workings: [],
  leavesOut: [],
};

function rowsOf(job: Job) {
  const site = siteStage.run(siteStage.view(job), {}, {});
  const sun = sunStage.run(sunStage.view(job), { site }, {});
  const roof = roofStage.run(roofStage.view(job), { sun }, {});
  const array = arrayStage.run(arrayStage.view(job), { roof }, {});
  const trunks = trunksStage.run(trunksStage.view(job), { array }, {});
  const board = boardStage.run(boardStage.view(job), { trunks }, {});
  return testsStage.run(testsStage.view(job), { array, trunks, board, backup: noBackup }, {}).rows;
}

const row = (id: string, job = eighteenModuleHouse()) => {
  const found = rowsOf(job).find((candidate) => candidate.id === id);
  if (found === undefined) throw new Error(`no test row ${id}`);
  return found;
};

// Trade brief section 7, worked there for this house.

test('line and earth linked: 6.16 mΩ/m · 22 m = 0.136 Ω, and 14.8 mΩ/m · 9.6 m of trunk = 0.142 Ω', () => {
  const { predicted } = row('r1r2:a');
  expect(predicted?.value).toBeCloseTo(0.136 + 0.142, 3);
  // the wider of 10 % and what the meter itself is good for, 0.05 Ω
  expect(predicted?.high).toBeCloseTo(0.278 + 0.05, 2);
});

test('trunk current at 620 W/m², 42 °C, 236 V: 245 W, 1.04 A each, 9.4 A for nine', () => {
  expect(row('current:a').predicted?.value).toBeCloseTo(9.36, 2);
});

test('rise under that sun: 2.45 V of home run at 9.4 of 15.7 A is 1.47 V there; the trunk adds 1.35 V on the same footing', () => {
  const share = 245.4 / 400;
  expect(row('rise:a').predicted?.value).toBeCloseTo((2.452 + 1.354) * share, 2);
});

test('module before plugging: 38.9 V · (1 − 0.25 % · 20 K) = 36.96 V at 45 °C', () => {
  expect(row('voc:module').predicted?.value).toBeCloseTo(36.955, 3);
});

test('loop at the far end, cold: 0.35 + 0.136 + 0.142 Ω, against 80 % of 2.73 Ω for B16', () => {
  const { predicted, limit } = row('loop:trunk:a');
  expect(predicted?.value).toBeCloseTo(0.628, 3);
  expect(limit?.value).toBeCloseTo(0.8 * 2.73, 2);
});

test('what the job says decides what is expected: a length, a size, a count', () => {
  const longer = eighteenModuleHouse((draft) => {
    const trunk = draft.choices.trunks?.a;
    if (trunk) trunk.homeRun.lengthM = 44;
  });
  expect(row('r1r2:a', longer).predicted?.value).toBeCloseTo(2 * 0.1355 + 0.142, 3);

  const thicker = eighteenModuleHouse((draft) => {
    const trunk = draft.choices.trunks?.a;
    if (trunk) trunk.homeRun.cableSheet = 'c10';
  });
  // 10 mm²: 3.66 mΩ/m there and back · 22 m = 0.0805 Ω
  expect(row('r1r2:a', thicker).predicted?.value).toBeCloseTo(0.0805 + 0.142, 3);

  const fewer = eighteenModuleHouse((draft) => {
    delete draft.choices.modules?.['m-a-9'];
    delete draft.choices.units?.['u-a-9'];
  });
  expect(row('current:a', fewer).predicted?.value).toBeCloseTo((8 / 9) * 9.36, 2);
  expect(row('units-reporting', fewer).predicted?.value).toBe(17);
});

test('a reading stands beside its prediction: lawful and as designed are two questions', () => {
  const reading = (value: number) =>
    eighteenModuleHouse((draft) => {
      draft.records = {
        readings: { r1: { at: '2026-05-12T10:00:00Z', by: 'Nia', test: 'loop:trunk:a', value, unit: 'Ω' } },
      };
    });
  expect(row('loop:trunk:a', reading(0.65)).reading).toMatchObject({ inLimit: true, nearPrediction: true });
  expect(row('loop:trunk:a', reading(1.2)).reading).toMatchObject({ inLimit: true, nearPrediction: false });
  expect(row('loop:trunk:a', reading(2.5)).reading).toMatchObject({ inLimit: false, nearPrediction: false });
});

test('a superseded reading no longer counts', () => {
  const job = eighteenModuleHouse((draft) => {
    draft.records = {
      readings: {
        r1: { at: '2026-05-12T10:00:00Z', by: 'Nia', test: 'loop:trunk:a', value: 2.5, unit: 'Ω' },
        r2: { at: '2026-05-12T09:00:00Z', by: 'Nia', test: 'loop:trunk:a', value: 0.6, unit: 'Ω', supersedes: 'r1' },
      },
    };
  });
  expect(row('loop:trunk:a', job).reading?.value).toBe(0.6);
});
