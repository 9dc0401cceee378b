import { type Job, kestrelRise, larkspurLane, quaysideTerrace } from '@eaveline/job';
import { expect, test } from 'vitest';
import { find, whyFound } from './find.ts';
import { findableOf } from './findable.ts';
import { oneLetterOff } from './folded.ts';

const at = '2026-05-15T06:10:00Z';
const [[moduleId, { unitId }] = ['', { unitId: '' }]] = Object.entries(kestrelRise.choices.modules);
const scanned: Job = {
  ...kestrelRise,
  customer: { name: 'Zoë Ångström', phone: '0400 123 456', email: 'zoe@finch.example' },
  records: {
    ...kestrelRise.records,
    serials: {
      one: { at, by: 'Nia', of: unitId, serial: '1234-5678-9012' },
      two: { at, by: 'Nia', of: 'main', serial: 'HB 77 0001' },
    },
  },
};
const book = [scanned, larkspurLane, quaysideTerrace].map((job) => ({ job, findable: findableOf(job) }));
const ids = (typed: string) => find(book, typed).hits.map(({ entry }) => entry.job.id);
const why = (typed: string, places?: Record<string, string>) =>
  find(book, typed).hits.map(({ fields }) => whyFound(fields, places));

test('several words are all in the job, each somewhere; none brings every job', () => {
  expect(ids('9 kestrel rise')).toEqual(['kestrel-rise']);
  expect(ids('kestrel heath')).toEqual(['kestrel-rise']);
  expect(ids('kestrel quayside')).toEqual([]);
  expect(ids('   ')).toHaveLength(3);
});

test('a serial is found as it stands on the label, with hyphens, with spaces, or in part', () => {
  for (const typed of ['1234-5678-9012', '1234 5678 9012', '123456789012', '5678-90', '345 678', '1234-56'])
    expect(ids(typed)).toEqual(['kestrel-rise']);
  expect(why('1234-56', { [unitId]: 'N1·4' })).toEqual([['serial of N1·4, 1234-5678-9012']]);
  expect(why('1234-56')).toEqual([[`serial of ${unitId}, 1234-5678-9012`]]);
});

test('a unit’s serial opens its place in the array, any other the handover', () => {
  const goes = (typed: string) => find(book, typed).hits[0]?.goes;
  expect(goes('5678')).toEqual({ sheet: '03', at: `module:${moduleId}` });
  expect(goes('hb770001')).toEqual({ sheet: '12' });
  expect(goes('kestrel')).toBeUndefined();
});

test('accents and capitals make no difference, and it is said what was found', () => {
  expect(why('zoe angstrom')).toEqual([['customer Zoë Ångström']]);
  expect(ids('ZOË')).toEqual(['kestrel-rise']);
  expect(why('0400123')).toEqual([['customer’s phone 0400 123 456']]);
  expect(why('finch.example')).toEqual([['customer’s mail zoe@finch.example']]);
  expect(ids('kestrel-rise')).toEqual(['kestrel-rise']);
});

test('units are found as a keyboard types them', () => {
  const noted: Job = { ...quaysideTerrace, about: 'Loop 0.35 Ω, leak 40 µA' };
  const found = (typed: string) => find([{ findable: findableOf(noted) }], typed).hits.length;
  for (const typed of ['0.35 ohm', '0.35 Ω', '0.35 \u2126', '40 uA', '40 µA', '40 μA'])
    expect([typed, found(typed)]).toEqual([typed, 1]);
  expect(found('0.36 ohm')).toBe(0);
  const cables = (typed: string) => why(typed).flat();
  for (const typed of ['4 mm2', '4mm2', '4 mm²'])
    expect([typed, cables(typed)]).toEqual([
      typed,
      expect.arrayContaining([expect.stringMatching(/^equipment 4 mm²/)]),
    ]);
});

test('one or two figures are no serial: they would be in every number', () => {
  expect(why('90')).not.toContainEqual(expect.arrayContaining([expect.stringContaining('serial')]));
});

test('equipment is found by its name, its sheet and its kind, where it was chosen', () => {
  expect(why('sluice-63')).toContainEqual(['equipment Sluice 63, three lines in, one kept']);
  expect(ids('changeover')).toHaveLength(3);
  const shelf = { ...larkspurLane, about: '', choices: { ...larkspurLane.choices, batteries: {} } };
  expect(find([{ findable: findableOf(shelf) }], 'heath').hits).toEqual([]);
});

test('archived and state are words like any other', () => {
  const put = { ...scanned, state: 'handed over' as const, archived: { at, by: 'Nia' } };
  expect(find([{ findable: findableOf(put) }], 'archived').hits).toHaveLength(1);
  expect(find([{ findable: findableOf(put) }], 'handed').hits).toHaveLength(1);
});

test('one letter off counts only where nothing is found as typed, and is said to be', () => {
  expect(find(book, 'larkspur').slip).toBe(false);
  for (const typed of ['larkspr', 'larkspurr', 'larkspir', 'lrakspur']) {
    const { hits, slip } = find(book, typed);
    expect([typed, hits.map(({ entry }) => entry.job.id), slip]).toEqual([typed, ['larkspur-lane'], true]);
  }
  expect(ids('larkspizz')).toEqual([]);
  expect(ids('heoth')).toHaveLength(3);
  // a number is never guessed
  expect(ids('1234-5679')).toEqual([]);
});

test('one letter off is exactly one', () => {
  expect(oneLetterOff('abcde', 'abcde')).toBe(false);
  expect(oneLetterOff('abcd', 'abcde')).toBe(true);
  expect(oneLetterOff('abdce', 'abcde')).toBe(true);
  expect(oneLetterOff('abxye', 'abcde')).toBe(false);
});
