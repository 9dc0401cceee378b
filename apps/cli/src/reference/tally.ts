import { type Judged, judge, type Tolerance } from './tolerance.ts';

/** One figure, or group of figures, of one row. */
export interface Trial {
  readonly quantity: string;
  /** `id` of the row. */
  readonly row: string;
  /** Undefined where there was no figure to compare: then `says` tells why. */
  readonly error: number | undefined;
  readonly relative: boolean;
  readonly within: boolean;
  readonly sameModel: boolean;
  readonly says?: string;
}

/** Something a file holds that was not tried. */
export interface Skipped {
  readonly what: string;
  readonly where: string;
  readonly why: string;
  readonly count: number;
}

export interface Tally {
  readonly trials: readonly Trial[];
  readonly skipped: readonly Skipped[];
  /** One figure. */
  figure(quantity: string, row: string, got: unknown, want: number, tolerance: Tolerance, off?: number): void;
  /** Figures, words and lists of any depth that belong together; the worst figure stands for all. */
  group(quantity: string, row: string, got: unknown, want: unknown, tolerance: Tolerance): void;
  /** No answer where one was wanted. */
  noAnswer(quantity: string, row: string, says: string): void;
  skip(what: string, where: string, why: string): void;
}

type Comparison = Judged | string;

const shown = (value: unknown) => JSON.stringify(value) ?? 'nothing';

function compare(got: unknown, want: unknown, tolerance: Tolerance): Comparison[] {
  if (typeof want === 'number') {
    return [typeof got === 'number' ? judge(got, want, tolerance) : `${shown(got)} where ${want} is wanted`];
  }
  if (Array.isArray(want)) {
    if (!Array.isArray(got) || got.length !== want.length) return [`${shown(got)} where ${shown(want)} is wanted`];
    return want.flatMap((each, i) => compare(got[i], each, tolerance));
  }
  if (typeof want === 'object' && want !== null) {
    const inside = (typeof got === 'object' && got !== null ? got : {}) as Record<string, unknown>;
    return Object.entries(want).flatMap(([key, each]) => compare(inside[key], each, tolerance));
  }
  const same = (got ?? null) === want;
  return [
    same
      ? { error: 0, relative: false, within: true, sameModel: true }
      : `${shown(got)} where ${shown(want)} is wanted`,
  ];
}

/** Collects what a run comes to. */
export function makeTally(): Tally {
  const trials: Trial[] = [];
  const skipped = new Map<string, Skipped>();
  const add = (quantity: string, row: string, found: readonly Comparison[]): void => {
    const wrong = found.find((each) => typeof each === 'string');
    if (typeof wrong === 'string' || found.length === 0) {
      const says = wrong ?? 'nothing to compare';
      trials.push({ quantity, row, error: undefined, relative: false, within: false, sameModel: false, says });
      return;
    }
    const judged = found as readonly Judged[];
    const relative = judged.some((each) => each.relative);
    trials.push({
      quantity,
      row,
      error: Math.max(...judged.map(({ error }) => error)),
      relative,
      within: judged.every(({ within }) => within),
      sameModel: judged.every(({ sameModel }) => sameModel),
    });
  };
  return {
    trials,
    get skipped() {
      return [...skipped.values()];
    },
    figure(quantity, row, got, want, tolerance, off) {
      const found = typeof got === 'number' ? judge(got, want, tolerance, off) : compare(got, want, tolerance)[0];
      add(quantity, row, found === undefined ? [] : [found]);
    },
    group: (quantity, row, got, want, tolerance) => add(quantity, row, compare(got, want, tolerance)),
    noAnswer: (quantity, row, says) => add(quantity, row, [says]),
    skip(what, where, why) {
      const key = `${what}\n${where}\n${why}`;
      skipped.set(key, { what, where, why, count: (skipped.get(key)?.count ?? 0) + 1 });
    },
  };
}
