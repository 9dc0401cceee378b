import { expect, test } from 'vitest';
import { demoJobs, kestrelRise } from '../demo/index.ts';
import { parseJob } from '../parse/parseJob.ts';
import { writeJob } from '../write/writeJob.ts';
import { cleanJob } from './cleanJob.ts';
import { duplicateJob } from './duplicateJob.ts';
import { idFrom } from './idFrom.ts';
import { type RegionCode, regions } from './regions.ts';

const stops = (text: string) => parseJob(text).remarks.filter(({ severity }) => severity === 'stop');
const there = { address: '4 Finch Row', latitudeDeg: -36.8, longitudeDeg: 144.3, zone: 'Australia/Melbourne' };

test('an id is a name without accents, in small, with hyphens; a taken one gets the next number', () => {
  expect(idFrom('12 Rue de l’Église')).toBe('12-rue-de-l-eglise');
  expect(idFrom('  Größe! ')).toBe('gro-e'); // ß has no accent to lose: it is another letter
  expect(idFrom('家')).toBe('job');
  const taken = new Set(['finch-row', 'finch-row-2']);
  expect(idFrom('Finch Row', (id) => taken.has(id))).toBe('finch-row-3');
  expect(idFrom('a'.repeat(200)).length).toBe(60);
});

const sheets = Object.entries(regions).flatMap(([code, { supplies }]) =>
  supplies.map(({ system }) => ({ region: code as RegionCode, system })),
);
test.each(sheets)('a clean sheet of $region, $system, opens again and holds no measure', ({ region, system }) => {
  const made = cleanJob({ name: '4 Finch Row', region, system, latitudeDeg: 53.4, longitudeDeg: -2.3 });
  if (!('job' in made)) throw new Error('it is whole');
  expect(stops(writeJob(made.job))).toEqual([]);
  expect(made.job).toMatchObject({ id: '4-finch-row', state: 'survey', facts: { supply: { system } } });
  expect(made.job.facts.supply.loopOhm).toBeUndefined();
  expect(made.job.facts.roof.planes).toEqual({});
});

test('what a clean sheet cannot be is said field by field, with the way out', () => {
  const wrong = cleanJob({ name: '', region: 'gb', latitudeDeg: 95, longitudeDeg: Number.NaN });
  if ('job' in wrong) throw new Error('there is no such place');
  expect(wrong.remarks.map(({ at }) => at)).toEqual([
    'name',
    'facts.site.address',
    'facts.site.latitudeDeg',
    'facts.site.longitudeDeg',
  ]);
  const split = cleanJob({ name: 'a', region: 'gb', system: 'split-phase', latitudeDeg: 53, longitudeDeg: -2 });
  expect('remarks' in split && split.remarks[0]?.wanted).toBe('single-phase or three-phase');
});

test('the same house again keeps every fact with who measured it, and no record', () => {
  const scanned = structuredClone(kestrelRise);
  scanned.records.serials.one = { at: '2026-05-15T06:10:00Z', by: 'Nia', of: 'n1-1', serial: '1234 5678' };
  scanned.choices.day.date = '2026-05-15';
  scanned.choices.day.doneBefore = { talk: true };
  scanned.archived = { at: '2026-06-01T00:00:00Z', by: 'Nia' };
  const { job } = duplicateJob(scanned, { id: 'kestrel-2', name: 'Kestrel, second', copyFor: { kind: 'same house' } });
  expect(job.facts).toEqual(kestrelRise.facts);
  expect(job.customer).toEqual(kestrelRise.customer);
  expect(job.records.serials).toEqual({});
  expect(job.choices.day.date).toBeUndefined();
  expect(job.choices.day.doneBefore).toEqual({});
  expect(job.archived).toBeUndefined();
  expect(job.choices.modules).toEqual(kestrelRise.choices.modules);
  expect(scanned.records.serials.one.serial).toBe('1234 5678'); // what it was made of is as it was
});

test('another house takes the drawing as a pattern, and nothing that was measured, agreed or read off here', () => {
  const { job, pattern } = duplicateJob(kestrelRise, {
    id: 'finch',
    name: 'Finch Row',
    copyFor: { kind: 'another house', site: there },
  });
  expect(job.customer.name).toBeUndefined();
  expect(job.facts.site).toMatchObject({ ...there, objects: {}, horizon: [] });
  expect(job.facts.site.recordLowC).toBeUndefined();
  expect(job.facts.network).toEqual({});
  expect(job.facts.provenance).toEqual({});
  expect(job.facts.supply.loopOhm).toBeUndefined();
  expect(job.facts.supply.measuredV).toEqual({});
  expect(job.facts.board.busA).toBeUndefined();
  expect(job.facts.roof.planes.north?.rafters).toEqual({});
  expect(job.facts.loads.circuits.cooling?.motor?.lockedRotorA).toBeUndefined();
  expect(job.choices.exportLimitSetVA).toBeUndefined();
  // the drawing itself
  expect(job.facts.roof.planes.north?.eaveLengthM).toBe(kestrelRise.facts.roof.planes.north?.eaveLengthM);
  expect(job.choices.modules).toEqual(kestrelRise.choices.modules);
  expect(pattern).toContain('walls');
});

const both = demoJobs.flatMap((job) => [
  [job.name, 'same house', job] as const,
  [job.name, 'another house', job] as const,
]);
test.each(both)('%s, %s: the copy opens as a job file', (_name, kind, job) => {
  const copyFor = kind === 'same house' ? { kind } : { kind, site: there };
  const { job: copy } = duplicateJob(job, { id: 'copy', name: 'Copy', copyFor });
  expect(stops(writeJob(copy))).toEqual([]);
});

test('fields another version wrote come along', () => {
  const annotated = { ...structuredClone(kestrelRise), gate: 'code 1' };
  const { job } = duplicateJob(annotated, { id: 'a', name: 'A', copyFor: { kind: 'same house' } });
  expect((job as typeof annotated).gate).toBe('code 1');
});
