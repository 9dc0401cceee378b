import type { z } from 'zod';
import { SMALLEST } from '../schema/open.ts';
import { type Remarked, shown, someOf, stop } from './remark.ts';

type Issue = z.core.$ZodIssue;
type Said = Pick<Remarked, 'wanted' | 'mend'> & { readonly found?: string };

/** What a field of this name holds, told from the unit at its end. The first that fits is taken. */
const UNITS: readonly (readonly [RegExp, string])[] = [
  [/Deg$/, '°'],
  [/MPa$/, ' MPa'],
  [/KPa$/, ' kPa'],
  [/GPa$/, ' GPa'],
  [/Pa$/, ' Pa'],
  [/KWh$|Kwh$/, ' kWh'],
  [/Mm2$/, ' mm²'],
  [/Mm$/, ' mm'],
  [/MS$/, ' m/s'],
  [/KA$/, ' kA'],
  [/MA$/, ' mA'],
  [/VA(PerLine|Total)?$/, ' VA'],
  [/Ohm$/, ' Ω'],
  [/Kg$/, ' kg'],
  [/Nm$/, ' N·m'],
  [/M$/, ' m'],
  [/A$/, ' A'],
  [/V$/, ' V'],
  [/W$/, ' W'],
  [/C$/, ' °C'],
  [/N$/, ' N'],
  [/S$/, ' s'],
];

/** Ways out that say more than "mend the number", by the end of the path. */
const WAYS_OUT: readonly (readonly [RegExp, string])[] = [
  [/latitudeDeg$/, 'Degrees from the equator, south negative: −37.6 lies in Victoria.'],
  [/\.zone$/, 'Give the area and the city, as Australia/Melbourne.'],
  [/longitudeDeg$/, 'Degrees from Greenwich, west negative. Latitude comes first: are the two swapped?'],
  [/facts\.site$/, 'A job begins with its place: address, latitudeDeg, longitudeDeg and zone.'],
  [/facts\.supply$/, 'Say what the house is fed with: system, nominalV, earthing and serviceA.'],
  [/homeRun\.lengthM$|\.lengthM$/, 'Measure along the cable, joint to joint, in metres.'],
  [/recordLowC$/, 'The lowest air temperature on record, in °C; leave it out where it is not known.'],
  [/dayShape$/, 'Give 24 shares of a day, one for each hour from midnight.'],
  [/pitchDeg$/, 'Pitch in degrees from level: 6 in 12 is 26.6.'],
  [/confirmations\.[^.]+\.by$/, 'Say which licensed person read the limit, or take the confirmation out.'],
  [/conductor$/, 'Keep the one that stands on the cable: areaMm2 for metric, awg for American.'],
];

const KINDS: Readonly<Record<string, string>> = {
  string: 'a text in quotes',
  number: 'a number',
  int: 'a whole number',
  boolean: 'true or false',
  object: 'a group of fields in braces',
  record: 'a group keyed by id, in braces',
  array: 'a list in brackets',
};

const FORMATS: Readonly<Record<string, Said>> = {
  date: { wanted: 'a date as 2026-05-15', mend: 'Write year, month and day with hyphens.' },
  datetime: {
    wanted: 'an instant as 2026-05-15T06:10:00Z',
    mend: 'Write date, T, time and the offset from UTC; Z means none.',
  },
};

/** How each sort of complaint reads: what was wanted, and the way out. */
const SAY: { readonly [C in Issue['code']]: (issue: Extract<Issue, { code: C }>, got: unknown) => Said } = {
  invalid_type: (issue, got) => ({
    wanted: KINDS[issue.expected] ?? issue.expected,
    mend: got === undefined ? 'Add it.' : 'Give it that shape.',
  }),
  too_small: (issue, got) => ({
    wanted: bound(...least(issue, got), ['more than', 'at least']),
    mend: lookAgain(issue.origin, 'sign, unit, decimal point'),
  }),
  too_big: (issue) => ({
    wanted: bound(issue, issue.maximum, ['less than', 'at most']),
    mend: lookAgain(issue.origin, 'unit, decimal point'),
  }),
  invalid_format: (issue) => FORMATS[issue.format] ?? { wanted: pattern(issue), mend: 'Write it in that manner.' },
  invalid_value: (issue) => ({ wanted: oneOf(issue.values), mend: 'Pick one of these.' }),
  invalid_union: (issue, got) => ({ ...unionSays(issue, got), mend: 'Pick one of these.' }),
  invalid_key: (issue) => ({
    found: `the id ${shown(String(issue.path.at(-1)))}`,
    wanted: 'an id of lower-case letters, digits and hyphens',
    mend: 'Rename it, here and wherever it is named.',
  }),
  invalid_element: () => ({ wanted: 'an entry of the right shape', mend: 'Look at this entry.' }),
  not_multiple_of: (issue) => ({ wanted: `a multiple of ${issue.divisor}`, mend: 'Round it.' }),
  unrecognized_keys: (issue) => ({ wanted: `no fields named ${someOf(issue.keys)}`, mend: 'Take them out.' }),
  custom: (issue) => ({ wanted: issue.message, mend: 'Mend the group as it says.' }),
};

/**
 * A schema issue in plain words, with a way out.
 *
 * @param raw the document as read: the issue names a path, the value is looked up in it.
 */
export function issueRemark(issue: Issue, raw: unknown): Remarked {
  const got = valueAt(raw, issue.path);
  const at = issue.path.join('.');
  const say = SAY[issue.code] as (issue: Issue, got: unknown) => Said;
  const said = say(issue, got);
  const better = WAYS_OUT.find(([end]) => end.test(at));
  return stop(at, said.found ?? shown(got), said.wanted, better ? better[1] : said.mend);
}

function valueAt(raw: unknown, path: readonly PropertyKey[]): unknown {
  let at = raw;
  for (const key of path) {
    if (typeof at !== 'object' || at === null || !Object.hasOwn(at, key)) return undefined;
    at = (at as Record<PropertyKey, unknown>)[key];
  }
  return at;
}

interface Bound {
  readonly origin: string;
  readonly path: readonly PropertyKey[];
  readonly inclusive?: boolean | undefined;
  readonly exact?: boolean | undefined;
}

/** The smallest figure taken only keeps sums from overflowing: to a person it is nothing, and more than nothing is wanted. */
function least(issue: Extract<Issue, { code: 'too_small' }>, got: unknown): [Bound, number | bigint] {
  const nothing = issue.minimum === SMALLEST && typeof got === 'number' && got <= 0;
  return nothing ? [{ ...issue, inclusive: false }, 0] : [issue, issue.minimum];
}

function bound(
  { origin, inclusive, exact, path }: Bound,
  limit: number | bigint,
  words: readonly [string, string],
): string {
  const n = shown(Number(limit));
  if (origin === 'array')
    return exact ? `exactly ${n} entries` : `${words[1]} ${n} ${limit === 1 ? 'entry' : 'entries'}`;
  if (origin === 'string')
    return exact
      ? `exactly ${n} ${limit === 1 ? 'letter' : 'letters'}`
      : limit === 1
        ? 'a text that is not empty'
        : `${words[1]} ${n} letters`;
  const unit = UNITS.find(([end]) => end.test(String(path.at(-1))))?.[1] ?? '';
  return `${words[inclusive ? 1 : 0]} ${n}${unit}`;
}

function lookAgain(origin: string, what: string): string {
  if (origin === 'array') return 'Add or take out entries.';
  return origin === 'string' ? 'Write it out as asked.' : `Look at the figure again: ${what}.`;
}

function pattern(issue: { readonly pattern?: string | undefined; readonly format: string }): string {
  if (issue.pattern?.includes('a-z0-9')) return 'lower-case letters, digits and hyphens';
  if (issue.pattern?.includes('\\d\\d:\\d\\d')) return 'a time of day as 07:00';
  if (issue.pattern === '/\\S/') return 'a text that is not empty';
  return `a text of the form ${issue.pattern ?? issue.format}`;
}

function oneOf(values: readonly unknown[]): string {
  const all = values.map((value) => (typeof value === 'string' ? value : String(value)));
  return all.length === 1 ? String(all[0]) : `one of ${all.join(', ')}`;
}

function unionSays(issue: Extract<Issue, { code: 'invalid_union' }>, got: unknown): Pick<Said, 'found' | 'wanted'> {
  const values = issue.errors.flat().flatMap((inner) => (inner.code === 'invalid_value' ? inner.values : []));
  if (values.length > 0) return { wanted: oneOf(values) };
  const discriminator = 'discriminator' in issue ? issue.discriminator : undefined;
  if (discriminator === undefined) return { wanted: 'one of the shapes allowed here' };
  return { found: shown(got), wanted: `a ${discriminator} of equipment this version knows` };
}
