import { gaugeAreaMm2, gaugeNumber } from './gauge.ts';
import { isAngle, isCrossSection, KINDS, type Kind, kindOf, type Unit, unitOf } from './kinds.ts';
import { plainSigns } from './plainSigns.ts';
import { readNumberAt } from './readNumberAt.ts';

/** Why a text was not taken: facts, then the sentence. */
export interface QuantityRefusal {
  readonly kind: 'refused';
  /** `12 apples is no length`. */
  readonly found: string;
  /** `a length in mm`. */
  readonly wanted: string;
  /** The way out, a sentence. */
  readonly mend: string;
}

/** What typed text says as a quantity. */
export type ReadQuantity =
  | { readonly kind: 'empty' }
  | {
      readonly kind: 'value';
      /** In the unit the field is kept in. */
      readonly value: number;
    }
  | QuantityRefusal;

/** Figures kept when a unit is converted: enough for any tape, too few to show what binary fractions leave behind. */
const FIGURES = 12;

/**
 * Reads a quantity as typed into the unit its field is kept in: `12 ft`, `6' 4 1/2"`, `120 cm` into m or mm;
 * `10 AWG` into mm²; `23 °F` into °C; `6/12` into °. A number without a unit is in the field's own.
 *
 * Spaces, case and look-alike signs do not matter, save where a case tells two units apart (mΩ, MΩ). A decimal comma
 * is read where it can be nothing else.
 *
 * @param keptIn  symbol of the unit the field is kept in; one of no known kind is read as it is.
 *
 * Sources: NIST SP 811 (2008), appendix B, for the factors; ASTM B258 for the gauge.
 */
export function readQuantity(typed: string, keptIn: string): ReadQuantity {
  const text = plainSigns(typed);
  if (text === '') return { kind: 'empty' };
  const kind = kindOf(keptIn);
  const read = readOfKind(text, kind, keptIn);
  if (read.kind === 'refused') return refusal(typed, text, read, kind, keptIn);
  const value = read.value;
  if (kind.least !== undefined && value < fromBase(kind.least.value, unitOf(kind, keptIn)))
    return {
      kind: 'refused',
      found: `${shownText(typed)} is ${kind.least.says}`,
      wanted: wantedOf(kind, keptIn),
      mend: 'Look at the sign and the unit again.',
    };
  return { kind: 'value', value: value === 0 ? 0 : value };
}

/** A refusal as one sentence and its way out. */
export function quantityRefusalWords({ found, mend }: QuantityRefusal): string {
  return `${found}. ${mend}`;
}

type Inner =
  | { readonly kind: 'value'; readonly value: number; readonly unitTyped: boolean }
  | ({ readonly kind: 'refused' } & Reason);

type Reason =
  | { readonly why: 'no number' }
  | { readonly why: 'two readings'; readonly text: string; readonly could: readonly [string, string] }
  | { readonly why: 'no unit of it'; readonly rest: string }
  | { readonly why: 'two numbers' }
  | { readonly why: 'too many'; readonly part: string; readonly under: number; readonly of: string };

interface Term {
  readonly value: number;
  readonly whole: boolean;
  readonly unit: Unit | undefined;
}

const refused = (reason: Reason): Inner => ({ kind: 'refused', ...reason });

function readOfKind(text: string, kind: Kind, keptIn: string): Inner {
  const special = isCrossSection(kind) ? gaugeArea(text) : isAngle(kind) ? slopeDeg(text) : undefined;
  if (special !== undefined) {
    return { kind: 'value', value: rounded(fromBase(special, unitOf(kind, keptIn))), unitTyped: true };
  }
  const sign = /^([+-]) ?/.exec(text);
  const terms = readTerms(text, sign?.[0].length ?? 0, kind);
  if (!Array.isArray(terms)) return refused(terms);
  const sum = sumOf(terms, kind, keptIn);
  if (typeof sum !== 'number') return refused(sum);
  return {
    kind: 'value',
    value: sign?.[1] === '-' ? negated(sum, terms, kind, keptIn) : sum,
    unitTyped: terms.some(({ unit }) => unit !== undefined),
  };
}

/** A minus belongs to what was typed: −4 °F is not minus what 4 °F is. */
function negated(sum: number, terms: readonly Term[], kind: Kind, keptIn: string): number {
  const [first] = terms;
  if (terms.length !== 1 || first === undefined) return -sum;
  const minus = sumOf([{ ...first, value: -first.value }], kind, keptIn);
  return typeof minus === 'number' ? minus : -sum;
}

/** Numbers, each with the unit behind it where there is one. */
function readTerms(text: string, from: number, kind: Kind): Term[] | Reason {
  const terms: Term[] = [];
  let at = from;
  while (at < text.length) {
    // a dash close behind feet, as on a drawing: 6'-4"
    if (terms.length > 0 && text[at - 1] !== ' ' && /^-\d/.test(text.slice(at))) at++;
    const number = readNumberAt(text, at);
    if (number.kind === 'two') return { why: 'two readings', text: number.text, could: number.could };
    if (number.kind === 'none') return terms.length === 0 ? { why: 'no number' } : { why: 'two numbers' };
    at = number.end + (text[number.end] === ' ' ? 1 : 0);
    const spelled = unitAt(text, at, kind);
    terms.push({ value: number.value, whole: number.whole, unit: spelled?.unit });
    if (spelled !== undefined) at = spelled.end;
    else if (/^[\p{L}°'"%#]/u.test(text.slice(at))) return { why: 'no unit of it', rest: text.slice(at) };
    if (text[at] === ' ') at++;
  }
  return terms.length === 0 ? { why: 'no number' } : terms;
}

/** The longest spelling of one of the kind's units at an index, with nothing of a word left behind it. */
function unitAt(text: string, at: number, kind: Kind): { readonly unit: Unit; readonly end: number } | undefined {
  let best: { unit: Unit; end: number } | undefined;
  for (const unit of kind.units) {
    for (const { word, exact } of spellings(unit)) {
      const end = at + word.length;
      if (word === '' || (best !== undefined && end <= best.end)) continue;
      const here = text.slice(at, end);
      const same = exact ? here === word : here.toLowerCase() === word.toLowerCase();
      if (same && !/^[\p{L}^°/·]/u.test(text.slice(end))) best = { unit, end: end + dotLength(text, end, word) };
    }
  }
  return best;
}

/** Every spelling of a unit in plain signs, and whether its case counts. */
function spellings({ spelled, exactCase = false, words = [] }: Unit) {
  return [
    ...spelled.map((word) => ({ word: plainSigns(word), exact: exactCase })),
    ...words.map((word) => ({ word, exact: false })),
  ];
}

/** `12 ft.`: the point of a shortened word, where no figure follows it. */
function dotLength(text: string, end: number, word: string): number {
  return /[a-z]$/i.test(word) && /^\.(?!\d)/.test(text.slice(end)) ? 1 : 0;
}

function sumOf(terms: readonly Term[], kind: Kind, keptIn: string): number | Reason {
  const kept = unitOf(kind, keptIn);
  const [only] = terms;
  if (only === undefined) return { why: 'no number' };
  if (terms.length === 1) {
    if (only.unit === undefined || only.unit === kept) return only.value;
    return rounded(fromBase(toBase(only.value, only.unit), kept));
  }
  let before: Unit | undefined;
  let base = 0;
  for (const [i, term] of terms.entries()) {
    const after = before?.smaller?.find(({ symbol, bare }) =>
      term.unit === undefined ? bare === true : symbol === term.unit?.symbol,
    );
    if (i > 0 && after === undefined) return { why: 'two numbers' };
    const unit = term.unit ?? (after === undefined ? undefined : unitOf(kind, after.symbol));
    if (unit === undefined || (i < terms.length - 1 && !term.whole)) return { why: 'two numbers' };
    if (after !== undefined && before !== undefined && term.value >= after.under)
      return { why: 'too many', part: `${term.value} ${after.symbol}`, under: after.under, of: before.symbol };
    base += toBase(term.value, unit);
    before = unit;
  }
  return rounded(fromBase(base, kept));
}

const toBase = (value: number, { per, shift = 0 }: Unit) => (value + shift) * per;
const fromBase = (base: number, { per, shift = 0 }: Unit) => base / per - shift;
const rounded = (value: number) => Number(value.toPrecision(FIGURES));

function gaugeArea(text: string): number | undefined {
  const n = gaugeNumber(text);
  return n === undefined ? undefined : gaugeAreaMm2(n);
}

/** A slope as the trade writes it, `6:12`, `6/12`, `6 in 12`, `50 %`: degrees from level. */
function slopeDeg(text: string): number | undefined {
  const ratio = /^(\d+(?:\.\d+)?) ?(?::|\/|in|on) ?(\d+(?:\.\d+)?)$/i.exec(text);
  const share = /^(\d+(?:[.,]\d+)?) ?(?:%|percent|per cent)$/i.exec(text);
  const rise = ratio
    ? Number(ratio[1]) / Number(ratio[2])
    : share
      ? Number(share[1]?.replace(',', '.')) / 100
      : Number.NaN;
  return Number.isFinite(rise) ? (Math.atan(rise) * 180) / Math.PI : undefined;
}

function wantedOf({ name }: Kind, keptIn: string): string {
  return keptIn === '' ? name : `${name} in ${keptIn}`;
}

/** Typed text as a refusal may repeat it: on one line, and not too much of it. */
function shownText(typed: string): string {
  const line = typed.trim().replace(/\s+/g, ' ');
  return line.length > 30 ? `${line.slice(0, 29)}…` : line;
}

function refusal(typed: string, text: string, reason: Reason, kind: Kind, keptIn: string): QuantityRefusal {
  const shown = shownText(typed);
  const say = (found: string, mend: string): QuantityRefusal => ({
    kind: 'refused',
    found,
    wanted: wantedOf(kind, keptIn),
    mend,
  });
  const asUsual = keptIn === '' ? 'Type it in figures.' : `Type it in ${keptIn}, or with its unit: ${kind.typed}.`;
  switch (reason.why) {
    case 'two readings': {
      const [a, b] = reason.could;
      return say(`${reason.text} could be ${a} or ${b}`, `Type ${a} or ${b}.`);
    }
    case 'too many':
      return say(
        `${reason.part} is as much as ${reason.of === 'ft' ? 'a foot' : `one ${reason.of}`} or more`,
        `Behind ${reason.of} type less than ${reason.under}.`,
      );
    case 'no number':
      return say(`${shown} is no number`, asUsual);
    case 'two numbers': {
      const other = otherKind(text, kind);
      return say(`${shown} is ${other?.name ?? 'more than one number'}`, asUsual);
    }
    case 'no unit of it': {
      const other = otherKind(text, kind);
      if (other !== undefined) return say(`${shown} is ${other.name}`, asUsual);
      const twoCases = caseTwins(reason.rest, kind);
      if (twoCases !== undefined)
        return say(`${shown} could be in ${twoCases.join(' or ')}`, `Type ${twoCases.join(' or ')} as it stands here.`);
      if (kind.units.every(({ symbol }) => symbol === '')) return say(`${shown} is more than a number`, asUsual);
      return say(`${shownText(reason.rest)} is no unit of ${kind.name}`, asUsual);
    }
  }
}

/** The kind whose unit stands in a text that its own kind does not read. */
function otherKind(text: string, kind: Kind): Kind | undefined {
  return KINDS.find((each) => each !== kind && readsWithUnit(text, each));
}

function readsWithUnit(text: string, kind: Kind): boolean {
  const first = kind.units[0];
  if (first === undefined) return false;
  const read = readOfKind(text, kind, first.symbol);
  return read.kind === 'value' && read.unitTyped;
}

/** Units that a word would be, were its letters not large or small: `MOHM` is mΩ or MΩ. */
function caseTwins(rest: string, kind: Kind): readonly string[] | undefined {
  const word = rest.trim().toLowerCase();
  const symbols = kind.units
    .filter((unit) => spellings(unit).some((each) => each.word.toLowerCase() === word))
    .map(({ symbol }) => symbol);
  return symbols.length === 0 ? undefined : symbols;
}
