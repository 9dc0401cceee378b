import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { parseJob } from '../parse/parseJob.ts';
import { writeJob } from '../write/writeJob.ts';

const text = readFileSync(new URL('../../fixtures/kestrel-rise.v0.job.json', import.meta.url), 'utf8');

test('a job of version 0 opens, and says that it was lifted', () => {
  const { job, remarks } = parseJob(text, 'kestrel-rise.v0.job.json');
  expect(remarks.filter(({ severity }) => severity === 'stop')).toEqual([]);
  expect(remarks[0]).toMatchObject({ severity: 'note', at: 'version', found: 'version 0', wanted: 'version 1' });
  expect(job?.version).toBe(1);
});

test('its choices mean what they meant: lists keyed by id, feed at the end is drop 1, the home run is one group', () => {
  const { job } = parseJob(text);
  expect(job?.choices.rules).toMatchObject({ pack: 'au-nz', variant: 'au' });
  expect(job?.choices.trunks).toEqual({
    a: {
      name: 'Trunk A',
      cableSheet: 'bramble-120-1',
      lines: ['L1'],
      feedDrop: 1,
      jumpers: { 'after-1': { afterDrop: 1, lengthM: 0.9 } },
      spareDrops: 0,
      homeRun: {
        cableSheet: 'cable-6',
        lengthM: 31,
        route: { method: 'C', ambientC: 50, circuitsTogether: 1, insulationMm: 0 },
      },
      breakerSheet: 'breaker-c20',
      // unknown to every version, and kept
      laidBy: 'Wren',
    },
  });
  expect(job?.choices.modules).toEqual({
    m1: { rowId: 'north-2', place: 1, unitId: 'u1', input: 1 },
    m2: { rowId: 'north-1', place: 1, unitId: 'u2', input: 1 },
  });
  expect(job?.choices.units).toEqual({
    u1: { sheet: 'alder-400', trunkId: 'a', drop: 1 },
    u2: { sheet: 'alder-400', trunkId: 'a', drop: 2 },
  });
  expect(job?.choices.crew).toEqual({ nia: { name: 'Nia', role: 'lead electrician' } });
});

test('its facts too', () => {
  const { job } = parseJob(text);
  expect(job?.facts.site).toMatchObject({ latitudeDeg: -37.6, longitudeDeg: 143.9 });
  expect(job?.facts.supply.system).toBe('three-phase');
  expect(Object.keys(job?.facts.roof.planes ?? {})).toEqual(['north']);
  expect(job?.facts.walls['east-wall'].items['laundry-window'].leftMm).toBe(500);
});

test('saved, it is a job of version 1 and opens without a word about versions', () => {
  const { job } = parseJob(text);
  if (!job) throw new Error('it opened above');
  const again = parseJob(writeJob(job));
  expect(again.job).toEqual(job);
  expect(again.remarks.map(({ at }) => at)).toEqual(['choices.trunks.a.laidBy']);
});

test('a list entry without an id, and an id given twice, stop it', () => {
  const old = JSON.parse(text);
  delete old.choices.units[0].id;
  old.choices.modules[1].id = 'm1';
  const { job, remarks } = parseJob(JSON.stringify(old));
  expect(job).toBeUndefined();
  expect(remarks.filter(({ severity }) => severity === 'stop').map(({ at }) => at)).toEqual(
    expect.arrayContaining(['choices.units.0', 'choices.modules.1.id']),
  );
});
