import { designSignature, type Job, kestrelRise } from '@eaveline/job';
import { expect, test } from 'vitest';
import { changeJob } from '../job/changeJob.ts';
import { beforeSigning, signatureChange, standingWords } from './signing.ts';

const nia = { name: 'Nia', licence: 'E 1234' };

function after(job: Job, ...changes: Parameters<typeof changeJob>[1]): Job {
  const changed = changeJob(job, changes);
  if (!('job' in changed)) throw new Error(changed.refusal.found);
  return changed.job;
}
const signed = after(kestrelRise, signatureChange(kestrelRise, nia, undefined, new Date('2026-05-12T01:00:00Z')));

test('a signature is a record more, and stands for the design it was put to', () => {
  expect(Object.keys(signed.records.signatures)).toEqual(['design-2026-05-12t01-00-00-000z']);
  expect(designSignature(signed)).toMatchObject({ name: 'Nia', licence: 'E 1234', of: 'this design' });
  expect(standingWords(designSignature(signed))).toBe('Signed by Nia, licence E 1234, on 2026-05-12, as it stands.');
});

test('a choice changed afterwards asks for a new one; the new one sets the old aside and leaves it on record', () => {
  const mended = after(signed, { path: ['choices', 'trunks', 'a', 'feedDrop'], value: 5 });
  const before = designSignature(mended);
  expect(standingWords(before)).toBe(
    'Signed by Nia, licence E 1234, on 2026-05-12 for an earlier design. It needs a new signature.',
  );
  const again = after(mended, signatureChange(mended, nia, before?.id, new Date('2026-05-12T02:00:00Z')));
  expect(designSignature(again)?.of).toBe('this design');
  const [first, second] = Object.entries(again.records.signatures);
  expect(again.records.signatures[first?.[0] ?? '']).toEqual(Object.values(signed.records.signatures)[0]);
  expect(second?.[1].supersedes).toBe(first?.[0]);
});

test('two signatures of one instant are told apart', () => {
  const change = signatureChange(signed, nia, undefined, new Date('2026-05-12T01:00:00Z'));
  expect(change.path.at(-1)).toBe('design-2026-05-12t01-00-00-000z-2');
});

test('the signer is told what is open', () => {
  expect(beforeSigning({ fails: 3, ask: 1, unconfirmed: 0 })).toBe(
    '3 checks fail, 1 waits for an answer. Sheet 08 has them.',
  );
  expect(beforeSigning({ fails: 0, ask: 0, unconfirmed: 0 })).toBe('');
});
