import { type Finding, given, worked } from '@eaveline/plan';
import { expect, test } from 'vitest';
import { copyText } from './copyText.ts';

const volts = { ...given('nominal', 230, 'V', 'facts.supply.nominalV'), symbol: 'U' };
const rating = { ...given('rating', 400, 'VA', 'choices.equipment.alder', 'equipment sheet'), symbol: 'S' };
const unit = worked('One unit', 400 / 230, 'A', 'I = S ÷ U', 'IEC 60364-5-52:2009, Annex G', [rating, volts], {
  symbol: 'I',
});
const finding = {
  state: 'fails',
  unconfirmed: false,
  title: 'Trunk A rises 5.32 V. The limit is 4.60 V.',
  value: 5.32,
  limit: 4.6,
  unit: 'V',
  sense: 'at most',
  clause: 'AS/NZS 4777.1 cl 3.3.3',
  edition: 'AS/NZS 4777.1 2024',
  seen: 'public text',
} as Finding;
const from = {
  job: 'Kestrel Rise',
  page: '04.2',
  workedOut: '2 May 2026, 09:41',
  rules: 'au-nz/au: AS/NZS 4777.1 2024',
  invented: true,
};

test('a working as it stands in a letter', () => {
  expect(copyText({ id: 'unit', name: 'One unit', working: unit }, from)).toBe(
    `One unit

One unit, I: 1.74 A
  I = S ÷ U
  = 400 VA ÷ 230 V
  = 1.74 A
  Source: IEC 60364-5-52:2009, Annex G
  rating, S: 400 VA
    Source: equipment sheet
  nominal, U: 230 V
    Source: the job

Kestrel Rise, page 04.2. Worked out 2 May 2026, 09:41.
Rules au-nz/au: AS/NZS 4777.1 2024.
Invented job, not for construction. Local codes and the licensed person decide.`,
  );
});

test('a finding says how it stands, by which clause and edition, and how that is known', () => {
  const text = copyText({ id: 'rise', name: 'Trunk rise, Trunk A', finding }, { ...from, invented: false });
  expect(text).toContain(
    `Fails. 5.32 V, at most 4.60 V. Trunk A rises 5.32 V. The limit is 4.60 V.
AS/NZS 4777.1 cl 3.3.3. Edition: AS/NZS 4777.1 2024. Seen in a public text; confirm against the current edition.`,
  );
  expect(text.endsWith('\nLocal codes and the licensed person decide.')).toBe(true);
});

test('plain spaces only: narrow and unbroken ones come out as boxes in some letters', () => {
  const far = worked('Length', 16_800, 'mm', 'taped', 'the survey', []);
  expect(copyText({ id: 'l', name: 'Length', working: far }, from)).not.toMatch(/[\u202f\u00a0]/);
});
