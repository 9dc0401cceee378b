import type { Plan } from '@eaveline/plan';

/** A series of a year, by its summary: the hours themselves are worked out again from the job. */
interface SeriesSummary {
  readonly series: true;
  readonly count: number;
  readonly least: number;
  readonly most: number;
  readonly mean: number;
}

/** The plan as JSON for other programs: job, hour of drawing, and every stage; long series by their summaries. */
export function planJson({
  plan,
  drawnAt,
  version,
}: {
  readonly plan: Plan;
  readonly drawnAt: string;
  readonly version: string;
}): string {
  const { jobId, jobName, invented, ...stages } = plan;
  const head = { format: 'eaveline-plan', version, jobId, jobName, invented, drawnAt };
  return `${JSON.stringify({ ...head, ...stages }, (_key, value: unknown) => summarised(value), 1)}\n`;
}

function summarised(value: unknown): unknown {
  if (!(value instanceof Float64Array || value instanceof Float32Array || value instanceof Uint8Array)) return value;
  return summaryOf(value);
}

function summaryOf(series: ArrayLike<number>): SeriesSummary {
  let [least, most, sum] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY, 0];
  for (let k = 0; k < series.length; k++) {
    const value = series[k] as number;
    least = Math.min(least, value);
    most = Math.max(most, value);
    sum += value;
  }
  const count = series.length;
  return count === 0
    ? { series: true, count, least: 0, most: 0, mean: 0 }
    : { series: true, count, least, most, mean: sum / count };
}
