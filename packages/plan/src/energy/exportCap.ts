import type { Line } from '../trunks/types.ts';

/** What may leave, VA: on each line, in sum, or both. */
export interface ExportLimit {
  readonly perLineVA?: number;
  readonly totalVA?: number;
}

/**
 * Energy held back by the export limit if the house used nothing, kWh: the most it can be. Undefined without a limit.
 *
 *     Σ (power − min(Σ lines min(power on the line, limit of a line), limit in sum)) · step
 */
export function exportLossAtMostKwh(
  byLine: Readonly<Partial<Record<Line, Float64Array>>>,
  { perLineVA, totalVA }: ExportLimit,
  stepS: number,
): number | undefined {
  if (perLineVA === undefined && totalVA === undefined) return undefined;
  const columns = Object.values(byLine);
  const steps = columns[0]?.length ?? 0;
  let lostW = 0;
  for (let i = 0; i < steps; i++) {
    let made = 0;
    let out = 0;
    for (const column of columns) {
      const watts = column[i] as number;
      made += watts;
      out += perLineVA === undefined ? watts : Math.min(watts, perLineVA);
    }
    lostW += made - (totalVA === undefined ? out : Math.min(out, totalVA));
  }
  return (lostW * stepS) / 3.6e6;
}
