import { textTable } from '../textTable.ts';
import type { Skipped, Trial } from './tally.ts';

/** How one quantity stands over all rows that try it. */
export interface QuantityLine {
  readonly quantity: string;
  readonly rows: number;
  readonly within: number;
  readonly withinSameModel: number;
  /** Errors are absolute, or shares of the wanted figure where the tolerance is only that; null without a figure. */
  readonly errorsAre: 'absolute' | 'relative';
  readonly mean: number | null;
  readonly p95: number | null;
  readonly largest: number | null;
  readonly worstRow: string;
  /** Where a row gave no figure to compare: the first reason. */
  readonly noAnswer?: string;
}

/** The smallest error that at least 95 of 100 rows do not exceed. */
const percentile95 = (rising: readonly number[]) => rising[Math.ceil(0.95 * rising.length) - 1] ?? null;

function lineOf(quantity: string, trials: readonly Trial[]): QuantityLine {
  const answered = trials.filter((trial): trial is Trial & { error: number } => trial.error !== undefined);
  const rising = answered.map(({ error }) => error).sort((a, b) => a - b);
  const silent = trials.find(({ error }) => error === undefined);
  const outside = answered.filter(({ within }) => !within);
  const worst = (outside.length > 0 ? outside : answered).reduce<Trial | undefined>(
    (top, trial) => (top === undefined || trial.error > (top.error ?? 0) ? trial : top),
    undefined,
  );
  return {
    quantity,
    rows: trials.length,
    within: trials.filter(({ within }) => within).length,
    withinSameModel: trials.filter(({ sameModel }) => sameModel).length,
    errorsAre: answered.some(({ relative }) => relative) ? 'relative' : 'absolute',
    mean: rising.length === 0 ? null : rising.reduce((sum, error) => sum + error, 0) / rising.length,
    p95: percentile95(rising),
    largest: rising.at(-1) ?? null,
    worstRow: (silent ?? worst)?.row ?? '',
    ...(silent?.says === undefined ? {} : { noAnswer: silent.says }),
  };
}

/** One line a quantity, in the order they were first tried. */
export function summarise(trials: readonly Trial[]): readonly QuantityLine[] {
  const groups = new Map<string, Trial[]>();
  for (const trial of trials) groups.set(trial.quantity, [...(groups.get(trial.quantity) ?? []), trial]);
  return [...groups].map(([quantity, group]) => lineOf(quantity, group));
}

function figure(error: number | null): string {
  if (error === null) return '–';
  if (error === 0) return '0';
  return error < 1e-3 ? error.toExponential(1) : error.toPrecision(2);
}

function row(line: QuantityLine): string[] {
  const mark = line.within === line.rows ? '' : 'OUTSIDE';
  const { quantity, rows, within, withinSameModel, errorsAre, mean, p95, largest, worstRow } = line;
  const errors = [mean, p95, largest].map(figure);
  const counts = [rows, within, withinSameModel].map(String);
  return [quantity, ...counts, ...errors, errorsAre === 'relative' ? 'rel' : 'abs', worstRow, mark];
}

const HEAD = ['quantity', 'rows', 'within', 'same model', 'mean', 'p95', 'largest', '', 'worst row', ''];

/** The table, the rows that gave no figure, and what was left untried. */
export function summaryText(
  lines: readonly QuantityLine[],
  skipped: readonly Skipped[],
  unread: readonly string[],
): string {
  const silent = lines.flatMap(({ quantity, worstRow, noAnswer }) =>
    noAnswer === undefined ? [] : [`${quantity}, ${worstRow}: ${noAnswer}`],
  );
  const untried = skipped.map(({ what, where, why, count }) => [what, String(count), why, where]);
  const tried = lines.reduce((sum, { rows }) => sum + rows, 0);
  const within = lines.reduce((sum, line) => sum + line.within, 0);
  const left = skipped.reduce((sum, { count }) => sum + count, 0);
  return [
    textTable(HEAD, lines.map(row), [1, 2, 3, 4, 5, 6]),
    `\n${lines.length} quantities, ${tried} comparisons, ${within} within tolerance, ${tried - within} outside, ${left} skipped.`,
    ...(silent.length > 0 ? ['\nWithout a figure to compare:', ...silent] : []),
    ...(untried.length > 0 ? ['\nSkipped:', textTable(['what', 'count', 'why', 'file'], untried, [1])] : []),
    ...(unread.length > 0 ? ['\nFiles of no shape known here:', ...unread] : []),
  ].join('\n');
}
