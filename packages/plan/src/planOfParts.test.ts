import { demoJobs } from '@eaveline/job';
import { expect, test } from 'vitest';
import { planFigures } from './planOfParts.ts';
import { workOut } from './workOut.ts';

test.each(demoJobs.map((job) => [job.id, job] as const))(
  '%s: what sheets and papers read is the same after JSON',
  (_, job) => {
    const plan = workOut(job);
    const figures = planFigures(plan);
    expect(JSON.parse(JSON.stringify(figures))).toEqual(figures);
    // the stages' own plan has its series still: a year of hours
    expect(plan.energy.acW).toHaveLength(8760);
    expect(plan.roof.planes[0]?.sun.beam).toHaveLength(8760);
  },
);
