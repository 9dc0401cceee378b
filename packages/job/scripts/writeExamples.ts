/** Writes the demo jobs to examples/. Run: npx tsx --conditions=source packages/job/scripts/writeExamples.ts */
import { mkdirSync, writeFileSync } from 'node:fs';
import { demoJobs } from '../src/demo/index.ts';
import { writeJob } from '../src/write/writeJob.ts';

const folder = new URL('../../../examples/', import.meta.url);
mkdirSync(folder, { recursive: true });
for (const job of demoJobs) writeFileSync(new URL(`${job.id}.job.json`, folder), writeJob(job));
