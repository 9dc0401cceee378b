import { expect, test } from 'vitest';
import { demoJobs, kestrelRise } from '../demo/index.ts';
import { parseJob } from '../parse/parseJob.ts';
import type { Job } from '../schema/job.ts';
import { writeJob } from '../write/writeJob.ts';
import { changedParts, designBasis, designDigest } from './designBasis.ts';

const changed = (change: (job: Job) => void): Job => {
  const job = structuredClone(kestrelRise);
  change(job);
  return job;
};

/** The same document with the fields of every group turned round. */
function turned(value: unknown): unknown {
  if (typeof value !== 'object' || value === null || Array.isArray(value)) return value;
  return Object.fromEntries(
    Object.entries(value)
      .reverse()
      .map(([key, inner]) => [key, turned(inner)]),
  );
}

test('16 hexadecimal digits, another for each demo job', () => {
  const digests = demoJobs.map(designDigest);
  for (const digest of digests) expect(digest).toMatch(/^[0-9a-f]{16}$/);
  expect(new Set(digests).size).toBe(demoJobs.length);
});

test.each(demoJobs.map((job) => [job.name, job] as const))(
  'law: %s has one digest whatever order its fields were set in, and after a way through a file',
  (_, job) => {
    expect(designDigest(turned(job) as Job)).toBe(designDigest(job));
    const { job: again } = parseJob(writeJob(job));
    expect(again && designDigest(again)).toBe(designDigest(job));
  },
);

test('a changed choice or fact changes the digest, and the part it lies in is named', () => {
  const before = designBasis(kestrelRise);
  const after = designBasis(
    changed(({ choices, facts }) => {
      Object.assign(choices.trunks.a ?? {}, { feedDrop: 5 });
      facts.supply.loopOhm = 0.41;
    }),
  );
  expect(after.digest).not.toBe(before.digest);
  expect(changedParts(before.parts, after.parts)).toEqual(['choices.trunks', 'facts.supply']);
  expect(changedParts(before.parts, before.parts)).toEqual([]);
});

test('the order of a list is part of the design: rails of a row turned round are another row', () => {
  const rails = (railsMm: number[]) =>
    designDigest(changed(({ choices }) => Object.assign(Object.values(choices.rows)[0] ?? {}, { railsMm })));
  expect(rails([430, 1292])).not.toBe(rails([1292, 430]));
});

test('records, the day, the crew, who measured and whose word stands behind a limit are no design', () => {
  const job = changed(({ records, choices, facts }) => {
    records.readings.one = { at: '2026-05-12T02:00:00Z', by: 'Nia', test: 'rise:a', value: 3.4, unit: 'V' };
    choices.day.date = '2026-06-01';
    choices.crew.wren = { name: 'Wren', role: 'roof hand' };
    choices.confirmations.one = { rule: 'trunk-rise', edition: '2024', by: 'Nia', on: '2026-05-12' };
    facts.provenance['supply.loopOhm'] = { by: 'Wren', at: '2026-05-12T02:00:00Z' };
  });
  expect(designDigest(job)).toBe(designDigest(kestrelRise));
});

test('a group with nothing in it is a group that is not there: a new field of later versions asks for no signature', () => {
  const job = changed(({ choices }) => Object.assign(choices, { flags: {}, later: { inner: {} } }));
  expect(designDigest(job)).toBe(designDigest(kestrelRise));
});
