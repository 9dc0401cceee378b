/**
 * How a figure came about. A working is a small tree: the figure, the formula in words or symbols, the figures it
 * was made of (workings again), and where the formula or the figure comes from.
 */
export interface Working {
  /** What it is, in the trade's words: `Home run, 6 mm² at 60 °C`. */
  readonly name: string;
  /** Symbol as a book sets it: `ΔU`, `I`, `Z_s`. */
  readonly symbol?: string;
  readonly value: number | string;
  /** `V`, `A`, `mm²`; empty for a plain number or a word. */
  readonly unit: string;
  /** `ΔU = 2 · L · r · I`, or a sentence. Left out for a figure that was simply given. */
  readonly formula?: string;
  readonly inputs?: readonly Working[];
  /** Standard and clause, book, sheet, survey reading; `from memory` or `common practice, no source` where it is so. */
  readonly source: string;
  /** Where a given figure stands in the job: `facts.supply.mains.lengthM`. The page makes it editable there. */
  readonly at?: string;
  /** Low and high where the figure is uncertain. */
  readonly range?: readonly [number, number];
  /** Decimals to show; where left out, three significant figures. */
  readonly decimals?: number;
  readonly note?: string;
}

/** A figure that stands in the job as it is. */
export function given(name: string, value: number | string, unit: string, at: string, source = 'the job'): Working {
  return { name, value, unit, source, at };
}

/** Decimals a bearing or a pitch is shown with at most: a hundredth of a degree is finer than any roof is measured. */
const MOST_OF_AN_ANGLE = 2;

/** An angle that stands in the job, with the decimals it was entered with: three figures would make 352.5° a 353°. */
export function givenAngle(name: string, deg: number, at: string, source?: string): Working {
  const entered = String(Number(deg.toFixed(MOST_OF_AN_ANGLE))).split('.')[1]?.length ?? 0;
  return { ...given(name, deg, '°', at, source), decimals: entered };
}

/** A figure worked out from others. */
export function worked(
  name: string,
  value: number | string,
  unit: string,
  formula: string,
  source: string,
  inputs: readonly Working[],
  more: Partial<Pick<Working, 'symbol' | 'range' | 'decimals' | 'note' | 'at'>> = {},
): Working {
  return { name, value, unit, formula, source, inputs, ...more };
}
