import type { Line } from '../trunks/types.ts';

/** What may leave, VA: on each line, in sum, or both. */
export interface ExportLimit {
  readonly perLineVA?: number;
  readonly totalVA?: number;
  /** Rating of the solar already there on each line: it takes its part of what may leave first. */
  readonly thereVA?: Readonly<Partial<Record<Line, number>>>;
}

/**
 * Energy held back by the export limit if the house used nothing, kWh: the most it can be. Undefined without a limit.
 *
 *     Σ (power − min(Σ lines min(power on the line, limit of a line), limit in sum)) · step
 *
 * each limit less the rating of the solar already there, never less than nothing. That it gives its rating in every
 * hour of light is more than it does, so the loss stays the most it can be.
 */
export function exportLossAtMostKwh(
  byLine: Readonly<Partial<Record<Line, Float64Array>>>,
  { perLineVA, totalVA, thereVA = {} }: ExportLimit,
  stepS: number,
): number | undefined {
  if (perLineVA === undefined && totalVA === undefined) return undefined;
  const left = (limitVA: number | undefined, takenVA: number) =>
    limitVA === undefined ? Number.POSITIVE_INFINITY : Math.max(0, limitVA - takenVA);
  const lines = Object.entries(byLine).map(([line, column]) => ({
    column,
    leftVA: left(perLineVA, thereVA[line as Line] ?? 0),
  }));
  const leftInSumVA = left(
    totalVA,
    Object.values(thereVA).reduce((sum, va) => sum + va, 0),
  );
  const steps = lines[0]?.column.length ?? 0;
  let lostW = 0;
  for (let i = 0; i < steps; i++) {
    let made = 0;
    let out = 0;
    for (const { column, leftVA } of lines) {
      const watts = column[i] as number;
      made += watts;
      out += Math.min(watts, leftVA);
    }
    lostW += made - Math.min(out, leftInSumVA);
  }
  return (lostW * stepS) / 3.6e6;
}
