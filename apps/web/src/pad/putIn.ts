import type { Working } from '@eaveline/plan';
import { valueWords } from './valueWords.ts';

/** A part of a formula: a figure of its own, or one of the inputs. */
interface Term {
  readonly words: string;
  readonly value: number;
  /** Share of it that rounding hides, where it is written in the formula itself: 0.98 is 0.975 to 0.985. */
  readonly hidden: number;
}

/** Share of one that a figure may be off by the rounding of the machine. */
const SAME = 1e-6;

/** What a sum that is written line under line calls its first input. */
const LINE_BEFORE = 'the line before';

/**
 * A formula with its figures put in: `ΔU = 2 · r · I · L` becomes `2 · 3.56 mΩ/m · 15.7 A · 31 m`.
 *
 * An input is known in the formula by its symbol, by its name, or by the first words of its name. Nothing is shown
 * that was not tried: the figures put in are worked out, and where they do not come to the figure (a formula that is
 * a sentence, units of unlike size, a sum over many) there is no such line.
 */
export function putIn({ formula, inputs = [], value }: Working): string | undefined {
  if (formula === undefined || typeof value !== 'number') return undefined;
  const terms = termsOf(inputs);
  const bare = rightSide(formula);
  const pieces = split(bare, [...terms.keys()]);
  const read = pieces.map((piece): Term | string | undefined => {
    if (/^[\s+−·×÷/()]*$/.test(piece)) return piece;
    return terms.get(piece) ?? writtenFigure(piece.trim());
  });
  if (read.some((each) => each === undefined)) return undefined;
  const known = read as readonly (Term | string)[];
  if (!known.some((each) => typeof each === 'string' && /[+−·×÷/]/.test(each))) return undefined;
  const result = evaluate(known);
  const share = known.reduce((sum, each) => sum + (typeof each === 'string' ? 0 : each.hidden), SAME);
  if (result === undefined || Math.abs(result - value) > share * Math.abs(value) + 1e-12) return undefined;
  return known
    .map((each) => (typeof each === 'string' ? each : each.words))
    .join('')
    .trim();
}

/** A figure of the formula itself. A whole one is exact; one with decimals is as exact as it is written. */
function writtenFigure(text: string): Term | undefined {
  const value = Number(text);
  if (!Number.isFinite(value)) return undefined;
  const decimals = text.split('.')[1]?.length ?? 0;
  return { words: text, value, hidden: decimals === 0 ? 0 : (0.5 * 10 ** -decimals) / Math.abs(value) };
}

/** What stands behind the equals sign, without the words that follow a comma. */
function rightSide(formula: string): string {
  const [first = ''] = formula.split(/[,.](?=\s)/);
  return first.slice(first.indexOf('=') + 1).trim();
}

/** The words an input is known by in a formula, each with its figure; words of two inputs are nobody's. */
function termsOf(inputs: readonly Working[]): ReadonlyMap<string, Term> {
  const found = new Map<string, Term | undefined>();
  const add = (key: string | undefined, term: Term) => {
    if (key !== undefined && key !== '') found.set(key, found.has(key) ? undefined : term);
  };
  for (const input of inputs) {
    if (typeof input.value !== 'number') continue;
    const term = { words: valueWords(input), value: input.value, hidden: 0 };
    const firsts = new Set([input.symbol, input.name, input.name.split(',')[0], input.name.split(' ')[0]]);
    for (const key of firsts) add(key, term);
    if (input === inputs[0]) add(LINE_BEFORE, term);
  }
  return new Map([...found].flatMap(([key, term]) => (term === undefined ? [] : [[key, term] as const])));
}

/** A formula cut at the words of its inputs and its operators, the longest words first. */
function split(formula: string, keys: readonly string[]): string[] {
  const escaped = keys
    .filter((key) => formula.includes(key)) // a word of letters of any script is dear to look for
    .sort((a, b) => b.length - a.length)
    .map((key) => `(?<![\\p{L}\\p{N}_])${key.replace(/[.*+?^${}()|[\]\\]/g, '\\$&')}(?![\\p{L}\\p{N}_])`);
  const cut = new RegExp(`(${[...escaped, '\\s*[+−·×÷/()]\\s*'].join('|')})`, 'u');
  return formula.split(cut).filter((piece) => piece.trim() !== '');
}

/** Works a sum out: products before sums, brackets before all. Undefined where it is no sum. */
function evaluate(parts: readonly (Term | string)[]): number | undefined {
  const tokens = parts.flatMap((part): (Term | string)[] =>
    typeof part === 'string' ? [...part.replace(/\s/g, '')] : [part],
  );
  let at = 0;
  const factor = (): number | undefined => {
    const token = tokens[at];
    at += 1;
    if (token === '(') {
      const inner = sum();
      const closed = tokens[at] === ')';
      at += 1;
      return closed ? inner : undefined;
    }
    return typeof token === 'object' ? token.value : undefined;
  };
  const chain = (next: () => number | undefined, does: Readonly<Record<string, (a: number, b: number) => number>>) => {
    let value = next();
    for (let sign = tokens[at]; typeof sign === 'string' && sign in does; sign = tokens[at]) {
      at += 1;
      const other = next();
      value = value === undefined || other === undefined ? undefined : does[sign]?.(value, other);
    }
    return value;
  };
  const divide = (a: number, b: number) => a / b;
  const times = (a: number, b: number) => a * b;
  const product = () => chain(factor, { '·': times, '×': times, '÷': divide, '/': divide });
  const sum = (): number | undefined => chain(product, { '+': (a, b) => a + b, '−': (a, b) => a - b });
  const value = sum();
  return at === tokens.length ? value : undefined;
}
