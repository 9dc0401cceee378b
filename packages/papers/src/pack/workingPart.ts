import type { Working } from '@eaveline/plan';
import { type Item, type Lettering, line, text } from '../drawing/index.ts';
import { letteringOf } from '../drawing/make.ts';
import { type Part, stacked, whole } from '../page/index.ts';
import { metrics, wrap } from '../type/index.ts';
import { resultOf } from './figures.ts';

const ROW = 4.6;
const CAP = 2.5;
const SMALL = 2.1;
const STEP = 4;

/**
 * A working as a tree: what and how much on one line, below it quietly the formula and the source, then what it was
 * made of, a step further in. A figure met again in the same tree keeps its line and drops its inputs.
 *
 * @param deepest how many steps in; what lies below is left to the pad on screen, and the page says so.
 * @param seen    figures printed before on the same sheets; this one's are added.
 */
export function workingPart(working: Working, deepest = 6, seen: Set<string> = new Set()): Part {
  const lines = linesOf(working, 0, { deepest, seen });
  return (at, widthMm, roomMm) => stacked(lines, at, widthMm, roomMm);
}

interface Walk {
  readonly deepest: number;
  readonly seen: Set<string>;
}

function linesOf(working: Working, depth: number, walk: Walk): Part[] {
  const { deepest, seen } = walk;
  const own = nodePart(working, depth);
  const inputs = working.inputs ?? [];
  if (inputs.length === 0) return [own];
  const key = `${working.name} ${working.value} ${working.unit} ${working.formula ?? ''}`;
  if (seen.has(key)) return [own, quietPart('worked out above', depth + 1)];
  seen.add(key);
  if (depth >= deepest) return [own, quietPart('inputs on the pad of the sheet', depth + 1)];
  return [own, ...inputs.flatMap((input) => linesOf(input, depth + 1, walk))];
}

/** One figure of the tree. */
function nodePart(working: Working, depth: number): Part {
  const part: Part = (at, widthMm, roomMm) => {
    const result = resultOf(working) + rangeWords(working);
    const bold = letteringOf({ capMm: CAP, weight: depth === 0 ? 700 : 400 });
    const inset = STEP * depth;
    const resultMm = Math.min(metrics.widthMm(result, bold), 0.45 * widthMm);
    const names = wrap(nameOf(working), widthMm - inset - resultMm - 3, bold);
    const results = wrap(result, resultMm + 0.2, bold);
    const rows = Math.max(names.length, results.length);
    const beside = besideMm(working, names, bold, widthMm - inset - resultMm - 5);
    const quietWords = beside === undefined ? below(working) : '';
    const quiet = wrap(quietWords, widthMm - inset - 2, letteringOf({ capMm: SMALL })).filter((one) => one !== '');
    const heightMm = ROW * rows + 3.7 * quiet.length + 0.6;
    return whole(heightMm, ([x, top]): Item[] => [
      ...names.map((words, k) => text(words, [x + inset, top - CAP - 1 - ROW * k], bold)),
      ...(beside === undefined
        ? []
        : [text(below(working), [x + inset + beside, top - CAP - 1], { capMm: SMALL, ink: 'quiet' })]),
      ...results.map((words, k) => text(words, [x + widthMm, top - CAP - 1 - ROW * k], { ...bold, anchor: 'end' })),
      ...quiet.map((words, k) =>
        text(words, [x + inset + 2, top - ROW * rows - SMALL - 0.6 - 3.7 * k], { capMm: SMALL, ink: 'quiet' }),
      ),
      ...(depth === 0 ? [line([x, top], [x + widthMm, top], { layer: 'TEXT', pen: 0.35 })] : []),
    ])(at, widthMm, roomMm);
  };
  return part;
}

/** Where the source of a figure that was simply given finds room on its own line, mm from its name's start. */
function besideMm(working: Working, names: readonly string[], bold: Lettering, roomMm: number): number | undefined {
  if (working.formula !== undefined || names.length > 1) return undefined;
  const after = metrics.widthMm(names[0] ?? '', bold) + 3;
  const wide = metrics.widthMm(below(working), letteringOf({ capMm: SMALL }));
  return wide > 0 && after + wide <= roomMm ? after : undefined;
}

function nameOf({ name, symbol }: Working): string {
  return symbol === undefined ? name : `${name}, ${plainly(symbol)}`;
}

/** Low letters after a stroke below, `Z_s`, stand plainly: the lettering has none of them. */
function plainly(words: string): string {
  return words.replace(/_(?=\p{L})/gu, '');
}

function rangeWords({ range, unit, decimals }: Working): string {
  if (range === undefined) return '';
  const [low, high] = range.map((value) =>
    resultOf({ name: '', value, unit: '', source: '', decimals: decimals ?? 0 }),
  );
  return ` (${low} to ${high}${unit === '' ? '' : `\u00a0${unit}`})`;
}

function below({ formula, source, note }: Working): string {
  return [formula === undefined ? formula : plainly(formula), sourceWords(source), note]
    .filter((words) => words !== undefined && words !== '')
    .join('  ·  ');
}

/** A source that is a place in the job is named as people say it. */
function sourceWords(source: string): string {
  if (source.startsWith('facts.')) return 'survey';
  return source.startsWith('choices.') ? 'the job' : source;
}

function quietPart(words: string, depth: number): Part {
  return whole(3.8, ([x, top]) => [text(words, [x + STEP * depth, top - SMALL - 0.7], { capMm: SMALL, ink: 'quiet' })]);
}
