import { demoJobs, type Job, jobSchema, kestrelRise, practiceYard } from '@eaveline/job';
import { expect, test } from 'vitest';
import { arrayStage } from '../array/index.ts';
import { backupStage } from '../backup/index.ts';
import { boardStage } from '../board/index.ts';
import { type Change, type Finding, isMendChange } from '../finding.ts';
import { roofStage } from '../roof/index.ts';
import { siteStage } from '../site/index.ts';
import { structureStage } from '../structure/index.ts';
import { sunStage } from '../sun/index.ts';
import { trunksStage } from '../trunks/index.ts';
import { checksStage } from './index.ts';
import { withChanges } from './testing/withChanges.ts';

/** Sky and roof take the most time and no mend of these moves the roof: they are worked out once a job. */
function planner(job: Job) {
  const site = siteStage.run(siteStage.view(job), {}, {});
  const sun = sunStage.run(sunStage.view(job), { site }, {});
  const roof = roofStage.run(roofStage.view(job), { sun }, {});
  return (changed: Job) => {
    const array = arrayStage.run(arrayStage.view(changed), { roof }, {});
    const trunks = trunksStage.run(trunksStage.view(changed), { array }, {});
    const board = boardStage.run(boardStage.view(changed), { trunks }, {});
    const backup = backupStage.run(backupStage.view(changed), { trunks }, {});
    const structure = structureStage.run(structureStage.view(changed), { roof, array }, {});
    const before = { site, roof, array, trunks, board, backup, structure };
    return checksStage.run(checksStage.view(changed), before, {});
  };
}

/** The job with changes made, read again as a job: a mend may not write what the schema refuses. */
const mended = (job: Job, changes: readonly Change[]): Job => jobSchema.parse(withChanges(job, changes));

const mendable = (findings: readonly Finding[]) =>
  findings.flatMap((finding) =>
    finding.mends.flatMap((mend) => (mend.changes === undefined ? [] : [{ finding, mend, changes: mend.changes }])),
  );

const stateIn = (findings: readonly Finding[], id: string) => findings.find((each) => each.id === id)?.state ?? 'meets';

test.each(demoJobs.map((job) => [job.name, job] as const))('%s: a mend, once made, mends', (_, job) => {
  const plan = planner(job);
  const before = plan(job).findings;
  for (const { finding, mend, changes } of mendable(before)) {
    const said = `${finding.id}: ${mend.words}`;
    expect(changes.every(isMendChange), said).toBe(true);
    const after = plan(mended(job, changes)).findings;
    const again = after.find(({ id }) => id === finding.id);
    expect(again?.state, said).not.toBe('fails');
    // what failed by it would be a surprise, unless its words name the thing
    const spoiled = after.filter(({ id, state }) => state === 'fails' && stateIn(before, id) === 'meets');
    expect(
      spoiled.filter(({ about }) => !mend.words.includes(about.name)).map(({ title }) => title),
      said,
    ).toEqual([]);
    if (mend.value !== undefined && again?.value !== undefined) {
      // feed and size together are taken as adding up; phasors on three lines part from that by millivolts
      expect(Math.abs(again.value - mend.value), said).toBeLessThan(0.01 * Math.abs(mend.value) + 0.01);
    }
  }
});

test('Kestrel Rise: the two mends of trunk A, as drawn', () => {
  const [kestrel] = demoJobs;
  if (kestrel === undefined) throw new Error('the demo jobs begin with Kestrel Rise');
  const rise = planner(kestrel)(kestrel).findings.find(({ id }) => id === 'trunk-rise:a');
  expect(rise?.state).toBe('fails');
  expect(rise?.limit).toBeCloseTo(4.6, 9);
  expect(rise?.mends.map(({ words }) => words)).toEqual(['Feed it at the fifth drop.', 'Run the home run in 10 mm².']);
});

/** A mend of a finding, by the words it begins with. */
function mendOf(job: Job, id: string, begins: string) {
  const plan = planner(job);
  const mends = plan(job).findings.find((each) => each.id === id)?.mends ?? [];
  const [change] = mends.find(({ words }) => words.startsWith(begins))?.changes ?? [];
  if (change === undefined) throw new Error(`${id} has no mend that begins “${begins}”`);
  const stateWith = (value: unknown) => stateIn(plan(mended(job, [{ ...change, value }])).findings, id);
  return { change, stateWith };
}

test('smallest: a battery is moved to where it just stands clear, and not a millimetre further', () => {
  const { change, stateWith } = mendOf(kestrelRise, 'battery-clearance:battery-laundry-window', 'Move it');
  expect(stateWith(change.value)).toBe('meets');
  expect(stateWith(Number(change.value) - 1)).toBe('fails');
});

test('smallest: the home run is offered in the next size that is enough', () => {
  const { change, stateWith } = mendOf(kestrelRise, 'trunk-rise:a', 'Run the home run');
  const areaOf = (id: string) => {
    const sheet = kestrelRise.choices.equipment[id];
    return sheet?.kind === 'cable' ? { areaMm2: sheet.conductor.areaMm2 ?? 0, cores: sheet.cores } : undefined;
  };
  const offered = areaOf(String(change.value));
  const smaller = Object.keys(kestrelRise.choices.equipment).filter((id) => {
    const cable = areaOf(id);
    return cable !== undefined && cable.cores === offered?.cores && cable.areaMm2 < offered.areaMm2;
  });
  expect(smaller.length).toBeGreaterThan(0);
  for (const id of smaller) expect(stateWith(id), id).toBe('fails');
});

test('smallest: an export limit is set to the limit itself; one VA more fails', () => {
  const { change, stateWith } = mendOf(practiceYard, 'export-limit:export-line', 'Set the export limit');
  expect([stateWith(change.value), stateWith(Number(change.value) + 1)]).toEqual(['meets', 'fails']);
});

test('smallest: feet go as far apart as rafters allow; the next rafter further does not hold', () => {
  const { change, stateWith } = mendOf(practiceYard, 'foot-uplift:worst-foot', 'Set feet');
  const rafterMm = practiceYard.facts.roof.planes.north?.rafters.spacingMm ?? 0;
  expect(rafterMm).toBeGreaterThan(0);
  expect(stateWith(Number(change.value) + rafterMm)).toBe('fails');
});

test('a mend that costs something elsewhere says so before it is taken', () => {
  // feet 900 mm apart on rafters leave N2 an end of 498 mm beside a span whose third is 300 mm
  const [mend] =
    planner(practiceYard)(practiceYard).findings.find(({ id }) => id === 'foot-uplift:worst-foot')?.mends ?? [];
  expect(mend?.words).toBe('Set feet at most 900 mm apart. N2 lower and N2 upper then overhang too far.');
});

test('a mend may change choices and nothing else, and never a licensed person’s word', () => {
  const may = (...path: string[]) => isMendChange({ path, value: 1 });
  expect(may('choices', 'trunks', 'a', 'feedDrop')).toBe(true);
  expect(may('facts', 'supply', 'loopOhm')).toBe(false);
  expect(may('records', 'signatures', 'one')).toBe(false);
  expect(may('choices', 'confirmations', 'one')).toBe(false);
  expect(may('choices')).toBe(false);
  expect(may()).toBe(false);
});
