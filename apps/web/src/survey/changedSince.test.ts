import { kestrelRise, surveySteps } from '@eaveline/job';
import { expect, test } from 'vitest';
import { changedSince } from './changedSince.ts';

const nia = (at: string) => ({ by: 'Nia', at });

test('what was read after the closing shows as changed since, the newest first; what was read before does not', () => {
  const job = structuredClone(kestrelRise);
  job.facts.provenance = {
    'supply.loopOhm': nia('2026-05-15T04:00:00Z'),
    'board.busA': nia('2026-05-16T00:00:00Z'),
    'roof.planes.west.rafters.spacingMm': nia('2026-05-17T10:00:00+10:00'),
  };
  const changed = () => changedSince(job, { steps: surveySteps(job) }).map(({ what, step }) => `${step}: ${what}`);
  expect(changed()).toEqual([]);
  job.facts.surveyClosed = nia('2026-05-15T14:20:00+10:00');
  expect(changed()).toEqual(['attic.west: West: Rafters, middle to middle', 'board: Rating of the bars']);
});
