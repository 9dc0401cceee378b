import { expect, test } from 'vitest';
import { demoJobs, kestrelRise } from '../demo/index.ts';
import { parseJob } from '../parse/parseJob.ts';
import { writeJob } from './writeJob.ts';

test.each(demoJobs.map((job) => [job.name, job] as const))('%s comes back as it went out', (_, job) => {
  const { job: again, remarks } = parseJob(writeJob(job));
  expect(remarks.filter(({ severity }) => severity !== 'note')).toEqual([]);
  expect(again).toEqual(job);
});

test('law: the order in which fields were set does not show', () => {
  const turned = (value: unknown): unknown =>
    typeof value !== 'object' || value === null || Array.isArray(value)
      ? value
      : Object.fromEntries(
          Object.entries(value)
            .reverse()
            .map(([key, inner]) => [key, turned(inner)]),
        );
  const backwards = turned(kestrelRise) as typeof kestrelRise;
  expect(Object.keys(backwards)[0]).not.toBe('format');
  expect(writeJob(backwards)).toBe(writeJob(kestrelRise));
  // nor once it has been read again, from a file or from a store that keeps no order of names
  const readAgain = (job: unknown) => JSON.stringify(parseJob(JSON.stringify(job)).job);
  expect(readAgain(backwards)).toBe(readAgain(kestrelRise));
});

test('it begins with what it is, and ends with a line break', () => {
  const text = writeJob(kestrelRise);
  expect(text.startsWith('{\n  "format": "eaveline-job",\n  "version": 1,\n  "id": "kestrel-rise",')).toBe(true);
  expect(text.endsWith('}\n')).toBe(true);
});

test('unknown fields are kept, wherever they stand', () => {
  const annotated = JSON.parse(writeJob(kestrelRise));
  annotated.colour = 'blue';
  annotated.facts.site.nextGate = { code: [1, { deep: true }] };
  annotated.choices.trunks.a.laidBy = 'Wren';
  annotated.choices.equipment['tern-40'].anodised = true;
  const { job } = parseJob(JSON.stringify(annotated));
  if (!job) throw new Error('unknown fields stop nothing');
  const again = JSON.parse(writeJob(job));
  expect(again.colour).toBe('blue');
  expect(again.facts.site.nextGate).toEqual({ code: [1, { deep: true }] });
  expect(again.choices.trunks.a.laidBy).toBe('Wren');
  expect(again.choices.equipment['tern-40'].anodised).toBe(true);
});
