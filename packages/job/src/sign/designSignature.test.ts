import { expect, test } from 'vitest';
import { kestrelRise } from '../demo/index.ts';
import type { Job } from '../schema/job.ts';
import { designBasis } from './designBasis.ts';
import { designSignature, signedWords } from './designSignature.ts';

/** Kestrel Rise, signed by Nia as it stood; then changed. */
function signed(change: (job: Job) => void = () => {}, more: object = {}): Job {
  const job = structuredClone(kestrelRise);
  const { digest, parts } = designBasis(job);
  job.records.signatures.one = {
    at: '2026-05-11T22:30:00Z',
    by: 'Nia',
    of: 'design',
    name: 'Nia',
    licence: 'E 1234',
    basis: digest,
    basisParts: { ...parts },
    ...more,
  };
  change(job);
  return job;
}

test('nobody has signed the demo job', () => {
  expect(designSignature(kestrelRise)).toBeUndefined();
});

test('signed for this design, on the day the site’s own clock showed', () => {
  // 22:30 UTC is half past eight the next morning in Melbourne's zone
  expect(designSignature(signed())).toEqual({
    id: 'one',
    name: 'Nia',
    licence: 'E 1234',
    on: '2026-05-12',
    of: 'this design',
    changed: [],
  });
});

test('a mend taken after it makes it a signature of an earlier design, and says which part moved', () => {
  const job = signed(({ choices }) => Object.assign(choices.trunks.a ?? {}, { feedDrop: 5 }));
  expect(designSignature(job)).toMatchObject({ of: 'earlier', changed: ['choices.trunks'] });
});

test('taken back, the design is the signed one again', () => {
  const job = signed(({ choices }) => {
    const before = choices.trunks.a?.feedDrop;
    Object.assign(choices.trunks.a ?? {}, { feedDrop: 5 });
    Object.assign(choices.trunks.a ?? {}, { feedDrop: before });
  });
  expect(designSignature(job)?.of).toBe('this design');
});

test('a signature that does not say for which design it was is none of this one', () => {
  expect(designSignature(signed(() => {}, { basis: undefined, basisParts: undefined }))?.of).toBe('not said');
});

test('of two that stand the later counts; one that is set aside does not', () => {
  const job = signed(({ records, choices }) => {
    Object.assign(choices.trunks.a ?? {}, { feedDrop: 5 });
    const again = designBasis({ facts: kestrelRise.facts, choices });
    records.signatures.two = {
      ...again,
      at: '2026-05-13T01:00:00Z',
      by: 'Ode',
      of: 'design',
      name: 'Ode',
      basis: again.digest,
    };
  });
  expect(designSignature(job)).toMatchObject({ id: 'two', name: 'Ode', of: 'this design' });
  job.records.signatures.three = {
    at: '2026-05-14T01:00:00Z',
    by: 'Ode',
    of: 'withdrawn',
    name: 'Ode',
    supersedes: 'two',
  };
  expect(designSignature(job)).toMatchObject({ id: 'one', of: 'earlier' });
});

test('for a title block: who and when, or that it was for another design, or that nobody has signed', () => {
  expect(signedWords(designSignature(signed()))).toEqual({ who: 'Nia', when: '12 May 2026' });
  const moved = signed(({ choices }) => Object.assign(choices.trunks.a ?? {}, { feedDrop: 5 }));
  expect(signedWords(designSignature(moved))).toEqual({ who: 'Nia', when: 'for an earlier design' });
  expect(signedWords(designSignature(kestrelRise))).toEqual({ who: 'not signed', when: '' });
});
