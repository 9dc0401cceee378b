import { type ExistingFacts, type Job, kestrelRise, quaysideTerrace } from '@eaveline/job';
import { expect, test } from 'vitest';
import { workOut } from '../../workOut.ts';
import { withChanges } from '../testing/withChanges.ts';

// Expected values by hand: out = min(units + old, max(set, old)) + old on a meter element of its own,
// at 230 V line to neutral (Kirchhoff; the gateway's export limit counts gross export less load, load nought).

const solar = (ratedA: number, more: Partial<ExistingFacts> = {}): ExistingFacts => ({
  kind: 'solar',
  name: 'Old array',
  ratedA,
  lines: ['L1'],
  ...more,
});

interface Case {
  readonly existing: Job['facts']['existing'];
  readonly setVA?: number;
  readonly perLineVA?: number;
  readonly totalVA?: number;
}

/** Quayside Terrace, one line at 230 V, with its network's letter and what stood there before. */
function jobWith({ existing, setVA, perLineVA, totalVA }: Case): Job {
  const job = structuredClone(quaysideTerrace);
  job.facts.existing = existing;
  job.facts.network.exportLimitVAPerLine = perLineVA;
  job.facts.network.exportLimitVATotal = totalVA;
  job.choices.exportLimitSetVA = setVA;
  return job;
}
const findingsOf = (job: Job) => workOut(job).checks.findings.filter(({ rule }) => rule === 'export-limit');
const onlyOf = (of: Case) => {
  const [finding, ...more] = findingsOf(jobWith(of));
  expect(more).toEqual([]);
  if (finding === undefined) throw new Error('The export limit was not judged');
  return finding;
};

const unitsKVA = workOut(quaysideTerrace).trunks.lineVA.L1 / 1000;

test('16 A of old solar at 230 V is 3.68 kVA more than the units alone; without one, nothing is more', () => {
  expect(onlyOf({ existing: {}, perLineVA: 20_000 }).value).toBeCloseTo(unitsKVA, 9);
  expect(onlyOf({ existing: { old: solar(16) }, perLineVA: 20_000 }).value).toBeCloseTo(unitsKVA + 3.68, 9);
  expect(onlyOf({ existing: { old: solar(16) }, totalVA: 20_000 }).value).toBeCloseTo(unitsKVA + 3.68, 9);
});

test('the letter lets 5 kVA out: the units alone are inside it, with 16 A of old solar they are not', () => {
  // the units have to lie between 5 − 3.68 = 1.32 and 5 kVA for the old array to tip it
  expect(unitsKVA).toBeGreaterThan(1.32);
  expect(unitsKVA).toBeLessThan(5);
  expect(onlyOf({ existing: {}, perLineVA: 5000 }).state).toBe('meets');
  const finding = onlyOf({ existing: { old: solar(16) }, perLineVA: 5000 });
  expect(finding.state).toBe('fails');
  const job = jobWith({ existing: { old: solar(16) }, perLineVA: 5000 });
  const after = findingsOf(withChanges(job, finding.mends[0]?.changes ?? []) as Job);
  expect(after.map(({ state, value }) => ({ state, value }))).toEqual([{ state: 'meets', value: 5 }]);
});

test('what is set holds the units back, never the old array: 5 kVA set, 30 A · 230 V = 6.9 kVA go out', () => {
  const finding = onlyOf({ existing: { old: solar(30) }, perLineVA: 5000, setVA: 5000 });
  expect(finding.value).toBeCloseTo(6.9, 9);
  expect(finding.state).toBe('fails');
  // no setting of ours mends it
  expect(finding.mends.map(({ changes }) => changes)).toEqual([undefined]);
  expect(finding.mends[0]?.words).toContain('6.90 kVA by itself');
});

test('on a meter element of its own the old array goes out past what is set: 1 + 2.3 = 3.3 kVA', () => {
  // 10 A · 230 V = 2.3 kVA unseen; the units give more than the 1 kVA they are held to
  const apart = { old: solar(10, { meterElement: true }) };
  expect(unitsKVA).toBeGreaterThan(1);
  const finding = onlyOf({ existing: apart, perLineVA: 3000, setVA: 1000 });
  expect(finding.value).toBeCloseTo(3.3, 9);
  // 3 − 2.3 = 0.7 kVA is left for what the setting sees
  expect(finding.mends[0]?.changes?.[0]?.value).toBeCloseTo(700, 9);
  // on the house's own element the same array is seen and the units give way to nothing: 2.3 kVA
  expect(onlyOf({ existing: { old: solar(10) }, perLineVA: 3000, setVA: 1000 }).value).toBeCloseTo(2.3, 9);
});

test('a generator inlet, a car charger and a second board send nothing out', () => {
  const there = {
    inlet: { kind: 'generator inlet', name: 'Inlet', ratedA: 32, lines: ['L1'] },
    charger: { kind: 'car charger', name: 'Charger', ratedA: 32, lines: ['L1'] },
    shed: { kind: 'second board', name: 'Shed', ratedA: 40, lines: ['L1'] },
  } satisfies Job['facts']['existing'];
  expect(onlyOf({ existing: there, perLineVA: 20_000 }).value).toBeCloseTo(unitsKVA, 9);
});

test('in sum over three lines: 26 units of 400 VA and 10 A on each line, 3 · 2 300 VA, are 17 300 VA', () => {
  const job = structuredClone(kestrelRise);
  job.choices.exportLimitSetVA = undefined;
  job.facts.network.exportLimitVATotal = 10_000;
  job.facts.existing = { old: solar(10, { lines: ['L1', 'L2', 'L3'] }) };
  const sum = findingsOf(job).find(({ limit }) => limit === 10);
  expect(sum?.value).toBeCloseTo(17.3, 9);
  expect(sum?.state).toBe('fails');
});
