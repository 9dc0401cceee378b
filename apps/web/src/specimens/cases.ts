import { kestrelRise } from '@eaveline/job';
import { type Finding, given, type Working, worked } from '@eaveline/plan';
import type { PlacedSubject } from '../pad/subject.ts';

/** The figures of the specimens, invented and rounded by hand. They stand on no plan. */
export const job = kestrelRise;

const length: Working = { ...given('length, one way', 31, 'm', 'choices.trunks.a.homeRun.lengthM'), symbol: 'L' };
const ohm: Working = {
  ...given('6 mm² copper at 60 °C', 0.003564, 'Ω/m', 'cable sheet', 'equipment sheet'),
  symbol: 'r',
};
const current = worked(
  'nine units',
  15.65,
  'A',
  'n · I',
  'sum',
  [
    { ...given('n', 9, '', 'case'), symbol: 'n' },
    { ...given('one unit', 1.739, 'A', 'case'), symbol: 'I' },
  ],
  {
    symbol: 'I',
  },
);
export const rise: Working = worked(
  'Home run',
  2 * 0.003564 * 15.65 * 31,
  'V',
  'ΔU = 2 · r · I · L',
  'IEC 60364-5-52, Annex G. From memory: not yet checked against a text.',
  [ohm, current, length],
  { symbol: 'ΔU', decimals: 3, range: [3.3, 3.6], note: 'The true rise is lower by about its own percentage.' },
);

const base: Finding = {
  rule: 'trunk-rise',
  id: 'trunk-rise:a',
  about: { kind: 'trunk', id: 'a', name: 'Trunk A' },
  title: 'Trunk A rises 5.32 V. The limit is 4.60 V.',
  detail: 'All nine units at 400 VA, end fed at unit 2·5.',
  state: 'fails',
  unconfirmed: false,
  value: 5.32,
  limit: 4.6,
  unit: 'V',
  sense: 'at most',
  margin: -0.72,
  clause: 'AS/NZS 4777.1, 3.3.3',
  edition: 'AS/NZS 4777.1 2024',
  seen: 'public text',
  working: rise,
  mends: [
    {
      words: 'Feed it at the fifth drop.',
      value: 4.25,
      changes: [{ path: ['choices', 'trunks', 'a', 'feedDrop'], value: 5 }],
    },
    { words: 'Split trunk A in two.' },
  ],
  needs: [],
  sheet: '04',
  stops: true,
};

const { value: _value, limit: _limit, sense: _sense, margin: _margin, working: _working, ...unmeasured } = base;

export const findings = {
  fails: base,
  ask: {
    ...unmeasured,
    id: 'rafters:west',
    rule: 'rafters',
    state: 'ask',
    title: 'Rafter spacing, west plane',
    detail: 'Six hooks wait for it. Nia is on the roof now.',
    clause: 'common practice',
    edition: '',
    seen: 'practice',
    mends: [{ words: 'Find two rafters and tape between them.' }],
    needs: ['facts.roof.planes.west.rafters.spacingMm'],
  },
  meets: {
    ...base,
    id: 'rise:b',
    state: 'meets',
    title: 'Trunk B, voltage rise',
    value: 3.7,
    margin: 0.9,
    mends: [],
    stops: false,
  },
  unconfirmed: {
    ...base,
    id: 'loop',
    state: 'meets',
    unconfirmed: true,
    seen: 'memory',
    title: 'Loop at the far outlet',
    value: 0.61,
    limit: 1.53,
    unit: 'Ω',
    margin: 0.92,
    mends: [],
    stops: false,
  },
} as const satisfies Readonly<Record<string, Finding>>;

export const subjects = {
  figure: { id: 'run', name: 'Home run, voltage rise', working: rise, sheet: '04', page: '04.2' },
  judged: { id: base.id, name: 'Trunk rise, Trunk A', finding: base, sheet: '04', page: '04.3' },
  words: {
    id: 'gum',
    name: 'Gum tree',
    words: ['9 m up, 6 m off. Measured 2 May with a tape.'],
    sheet: '02',
    page: '02.4',
  },
} as const satisfies Readonly<Record<string, PlacedSubject>>;
