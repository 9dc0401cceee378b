import { designBasis, type Job, kestrelRise, quaysideTerrace } from '@eaveline/job';
import { expect, test } from 'vitest';
import { checksOf } from '../testing/checksOf.ts';

function signed(job: Job): Job {
  const copy = structuredClone(job);
  const { digest, parts } = designBasis(copy);
  copy.records.signatures.one = {
    at: '2026-05-12T01:00:00Z',
    by: 'Nia',
    of: 'design',
    name: 'Nia',
    licence: 'E 1234',
    basis: digest,
    basisParts: { ...parts },
  };
  return copy;
}

const signOff = (job: Job) => checksOf(job).findings.find(({ rule }) => rule === 'design-sign-off');

test('while it is designed nobody is asked to sign; once the letter is out somebody is', () => {
  expect(kestrelRise.state).toBe('design');
  expect(signOff(kestrelRise)).toBeUndefined();
  expect(quaysideTerrace.state).toBe('letter');
  expect(signOff(quaysideTerrace)).toMatchObject({ state: 'ask', stops: false, sheet: '12' });
});

test('signed as it stands it meets', () => {
  expect(signOff(signed(kestrelRise))).toMatchObject({
    state: 'meets',
    title: 'Signed by Nia, licence E 1234, on 2026-05-12, as it stands.',
  });
});

test('a mend taken after the signature asks for a new one, and says what moved; taken back it meets again', () => {
  const job = signed(kestrelRise);
  const rise = checksOf(job).findings.find(({ id }) => id === 'trunk-rise:a');
  const [change] = rise?.mends[0]?.changes ?? [];
  expect(change?.path.join('.')).toBe('choices.trunks.a.feedDrop');
  const trunk = job.choices.trunks.a as Job['choices']['trunks'][string];
  const before = trunk.feedDrop;

  trunk.feedDrop = change?.value as number;
  expect(signOff(job)).toMatchObject({
    state: 'ask',
    title: 'Signed by Nia, licence E 1234, on 2026-05-12 for an earlier design.',
    detail: 'One part changed since: trunks. It needs a new signature.',
  });

  trunk.feedDrop = before;
  expect(signOff(job)?.state).toBe('meets');
});

test('a fact measured again asks too; a reading, the date or a confirmed limit does not', () => {
  const measured = signed(kestrelRise);
  measured.facts.supply.loopOhm = 0.61;
  expect(signOff(measured)?.detail).toBe('One part changed since: supply as surveyed. It needs a new signature.');
  const later = signed(kestrelRise);
  later.choices.day.date = '2026-06-30';
  later.choices.confirmations.rise = { rule: 'trunk-rise', edition: '2024', by: 'Nia', on: '2026-05-13' };
  later.records.readings.one = { at: '2026-05-13T01:00:00Z', by: 'Ode', test: 'rise:a', value: 3, unit: 'V' };
  expect(signOff(later)?.state).toBe('meets');
});

test('a signature without a basis does not stand for this design', () => {
  const job = signed(kestrelRise);
  delete job.records.signatures.one?.basis;
  expect(signOff(job)).toMatchObject({ state: 'ask', detail: 'It needs a new signature.' });
});
