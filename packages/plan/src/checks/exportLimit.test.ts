import { type ExistingFacts, type Job, kestrelRise } from '@eaveline/job';
import { expect, test } from 'vitest';
import { workOut } from '../workOut.ts';

/*
 * Kestrel Rise has 9, 9 and 8 units of 400 VA on its lines: 3 600, 3 600 and 3 200 VA, 10 400 in sum. Its network lets
 * out 5 000 VA on each line.
 */
const solar = (ratedA: number, lines: ExistingFacts['lines']): ExistingFacts => ({
  ...{ kind: 'solar', name: 'Old array', ratedA, lines },
});

function exportOf(change: (job: Job) => void) {
  const job = structuredClone(kestrelRise);
  change(job);
  const found = workOut(job).checks.findings.filter(({ rule }) => rule === 'export-limit');
  return found.map(({ state, value, limit, mends }) => ({
    ...{ state, value: Number(value?.toFixed(3)), limit, mends: mends.map(({ words }) => words) },
  }));
}

test('alone: the fullest line gives what its units are rated at', () => {
  const [line] = exportOf((job) => {
    job.choices.exportLimitSetVA = undefined;
  });
  expect(line).toMatchObject({ state: 'meets', value: 3.6, limit: 5 });
});

test('with solar that was there, 10 A on L1: 3 600 + 10 · 230 = 5 900 VA go out there', () => {
  const [line] = exportOf((job) => {
    job.choices.exportLimitSetVA = undefined;
    job.facts.existing = { old: solar(10, ['L1']) };
  });
  expect(line).toMatchObject({ state: 'fails', value: 5.9, limit: 5 });
  expect(line?.mends[0]).toMatch(/^Set the export limit to 5\.00 kVA/);
});

test('held to 5 000 VA at the point of supply, the units give way to the solar that was there', () => {
  const [line] = exportOf((job) => {
    job.choices.exportLimitSetVA = 5000;
    job.facts.existing = { old: solar(10, ['L1']) };
  });
  expect(line).toMatchObject({ state: 'meets', value: 5 });
});

test('solar that alone is over the limit, 25 A · 230 V = 5 750 VA, is held by nothing that is set here', () => {
  const [line] = exportOf((job) => {
    job.choices.exportLimitSetVA = 5000;
    job.facts.existing = { old: solar(25, ['L2']) };
  });
  expect(line).toMatchObject({ state: 'fails', value: 5.75 });
  expect(line?.mends).toEqual([
    'The solar that was there gives more than that by itself: ask the network, or have it held too.',
  ]);
});

test('in sum: 10 400 VA of units and 10 A on each of three lines, 6 900 VA, are 17 300 VA', () => {
  const sum = exportOf((job) => {
    job.choices.exportLimitSetVA = undefined;
    job.facts.network.exportLimitVATotal = 10_000;
    job.facts.existing = { old: solar(10, ['L1', 'L2', 'L3']) };
  }).find(({ limit }) => limit === 10);
  expect(sum).toMatchObject({ state: 'fails', value: 17.3, limit: 10 });
});
