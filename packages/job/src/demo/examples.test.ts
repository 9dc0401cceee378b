import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { parseJob } from '../parse/parseJob.ts';
import { writeJob } from '../write/writeJob.ts';
import { demoJobs } from './index.ts';

const folder = new URL('../../../../examples/', import.meta.url);

test('the examples are the demo jobs, one file each', () => {
  const files = readdirSync(folder).filter((file) => file.endsWith('.job.json'));
  expect(files.sort()).toEqual(demoJobs.map((job) => `${job.id}.job.json`).sort());
});

test.each(demoJobs.map((job) => [job.id, job] as const))(
  '%s as a file is the job the product ships, and opens',
  (id, job) => {
    const text = readFileSync(new URL(`${id}.job.json`, folder), 'utf8');
    // after a change: npx tsx --conditions=source packages/job/scripts/writeExamples.ts
    expect(text).toBe(writeJob(job));
    const { job: opened, remarks } = parseJob(text);
    expect(remarks.filter(({ severity }) => severity !== 'note')).toEqual([]);
    expect(opened).toEqual(job);
  },
);
