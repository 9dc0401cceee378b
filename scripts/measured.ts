/** Times that are taken where the work is done, in a page, and not around a call. */
export interface Measured {
  readonly samples: readonly number[];
  /** Other figures of the same run, by name with their unit. */
  readonly more?: Readonly<Record<string, number>>;
}

/** What a `*.bench.ts` file exports a list of, under the name `measuredBenches`. */
export interface MeasuredBench {
  readonly name: string;
  readonly unit: 'ms';
  /** A promise about a share of the samples, with its reason; going over it fails the run. */
  readonly budget: { readonly p50?: number; readonly p95?: number; readonly why: string };
  /** Throws where what it waits for does not come or is wrong. */
  measure(times: number): Promise<Measured>;
}

/**
 * The value that a share of the samples does not go over: the smallest one with at least that share at or below it.
 *
 * @param share  0 to 1.
 */
export function quantile(samples: readonly number[], share: number): number {
  const sorted = [...samples].sort((a, b) => a - b);
  const value = sorted[Math.max(0, Math.ceil(share * sorted.length) - 1)];
  if (value === undefined) throw new Error('No samples: nothing was measured.');
  return value;
}
