import { kestrelRise } from '@eaveline/job';
import { expect, test } from 'vitest';
import { changeJob, refusalWords } from './changeJob.ts';

test('a longer home run is taken', () => {
  const changed = changeJob(kestrelRise, [{ path: ['choices', 'trunks', 'a', 'homeRun', 'lengthM'], value: 33.5 }]);
  expect('job' in changed && changed.job.choices.trunks.a?.homeRun.lengthM).toBe(33.5);
});

test('a length below zero is refused with the way out, and the job stays as it was', () => {
  const changed = changeJob(kestrelRise, [{ path: ['choices', 'trunks', 'a', 'homeRun', 'lengthM'], value: -3 }]);
  if (!('refusal' in changed)) throw new Error('−3 m of cable was taken');
  expect(changed.refusal.at).toBe('choices.trunks.a.homeRun.lengthM');
  expect(refusalWords(changed.refusal)).toContain('more than 0');
  expect(kestrelRise.choices.trunks.a?.homeRun.lengthM).toBe(31);
});

test('a drop that is not there cannot be fed', () => {
  const changed = changeJob(kestrelRise, [{ path: ['choices', 'trunks', 'a', 'cableSheet'], value: 'no-such' }]);
  expect('refusal' in changed).toBe(true);
});
