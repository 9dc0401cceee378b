import { type Job, kestrelRise } from '@eaveline/job';
import { expect, test } from 'vitest';
import { changeJob } from '../job/changeJob.ts';
import { freshId, thingOf } from './draft.ts';
import { changesOf, draftDesk } from './factDesk.ts';

const seen = { by: 'Nia', at: '2026-05-15T01:00:00Z', with: 'tape 2' };

test('a draft puts groups together from their paths', () => {
  expect(thingOf({ facts: { name: 'South', 'edges.left': 'hip', 'edges.right': 'verge' }, seen: {} })).toEqual({
    name: 'South',
    edges: { left: 'hip', right: 'verge' },
  });
});

test('ids are of small letters, never taken twice, and never the address of a draft', () => {
  expect(freshId('Garage, south wall', [])).toBe('garage-south-wall');
  expect(freshId('Garage', ['garage', 'garage-2'])).toBe('garage-3');
  expect(freshId('New', [])).toBe('thing');
  expect(freshId('屋根', [])).toBe('thing');
});

test('a value and who found it are one step: both in the job, or neither', () => {
  const taking = { facts: { 'supply.loopOhm': 0.31 }, seen: { 'supply.loopOhm': seen } };
  const changed = changeJob(kestrelRise, changesOf(taking)) as { job: Job };
  expect(changed.job.facts.supply.loopOhm).toBe(0.31);
  expect(changed.job.facts.provenance['supply.loopOhm']).toEqual(seen);
  const refused = changeJob(kestrelRise, changesOf({ ...taking, facts: { 'supply.loopOhm': -1 } }));
  expect('refusal' in refused).toBe(true);
});

test('a draft keeps what is known and drops what is taken back', () => {
  let draft = { facts: {}, seen: {} };
  const desk = () =>
    draftDesk(kestrelRise, 'roof.planes.new', draft, (next) => {
      draft = next;
      return undefined;
    });
  desk().take({ facts: { 'roof.planes.new.pitchDeg': 22.5 }, seen: { 'roof.planes.new.pitchDeg': seen } }, 'Pitch');
  expect(desk().valueAt('roof.planes.new.pitchDeg')).toBe(22.5);
  expect(desk().seenAt('roof.planes.new.pitchDeg')).toEqual(seen);
  desk().take(
    { facts: { 'roof.planes.new.pitchDeg': undefined }, seen: { 'roof.planes.new.pitchDeg': undefined } },
    '',
  );
  expect(draft).toEqual({ facts: {}, seen: {} });
});
