import { demoJobs, type Job, jobSchema } from '@eaveline/job';
import { expect, test } from 'vitest';
import { arrayStage } from '../array/index.ts';
import { backupStage } from '../backup/index.ts';
import { boardStage } from '../board/index.ts';
import type { Change, Finding } from '../finding.ts';
import { roofStage } from '../roof/index.ts';
import { siteStage } from '../site/index.ts';
import { structureStage } from '../structure/index.ts';
import { sunStage } from '../sun/index.ts';
import { trunksStage } from '../trunks/index.ts';
import { checksStage } from './index.ts';

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
function withChanges(job: Job, changes: readonly Change[]): Job {
  const copy = structuredClone(job);
  for (const { path, value } of changes) {
    let at = copy as unknown as Record<string, unknown>;
    for (const step of path.slice(0, -1)) at = at[step] as Record<string, unknown>;
    at[path.at(-1) as string] = value;
  }
  return jobSchema.parse(copy);
}

const mendable = (findings: readonly Finding[]) =>
  findings.flatMap((finding) =>
    finding.mends.flatMap((mend) => (mend.changes === undefined ? [] : [{ finding, mend, changes: mend.changes }])),
  );

test.each(demoJobs.map((job) => [job.name, job] as const))('%s: a mend, once made, mends', (_, job) => {
  const plan = planner(job);
  for (const { finding, mend, changes } of mendable(plan(job).findings)) {
    if (finding.state !== 'fails') continue;
    const after = plan(withChanges(job, changes)).findings;
    const again = after.find(({ id }) => id === finding.id);
    const said = `${finding.id}: ${mend.words}`;
    expect(again?.state, said).not.toBe('fails');
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
