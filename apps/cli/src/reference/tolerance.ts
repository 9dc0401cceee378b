/** How far a figure may be off. One of the two of a pair is enough. */
export interface Tolerance {
  /** For an implementation of exactly the model named. */
  readonly sameAbs?: number | undefined;
  readonly sameRel?: number | undefined;
  /** Still right for the purpose; where it is not given, the same-model figures count. */
  readonly okAbs?: number | undefined;
  readonly okRel?: number | undefined;
}

export interface Judged {
  /** Absolute, or relative where the tolerance is only that. */
  readonly error: number;
  readonly relative: boolean;
  readonly within: boolean;
  readonly sameModel: boolean;
}

/** Last digits of binary sums. */
const ROUNDING = 1e-12;

function fits(off: number, size: number, abs: number | undefined, rel: number | undefined): boolean {
  const most = Math.max(abs ?? 0, (rel ?? 0) * size);
  return off <= most + ROUNDING;
}

/** Holds one figure against another; `off` may be measured otherwise than by difference (an angle that wraps). */
export function judge(got: number, want: number, t: Tolerance, off = Math.abs(got - want)): Judged {
  const size = Math.abs(want);
  const sameModel = fits(off, size, t.sameAbs, t.sameRel);
  const stated = t.okAbs !== undefined || t.okRel !== undefined;
  const within = sameModel || (stated && fits(off, size, t.okAbs, t.okRel));
  const relative = t.sameAbs === undefined && t.okAbs === undefined;
  return { error: relative && size > 0 ? off / size : off, relative, within, sameModel };
}

type Entry = Readonly<Record<string, unknown>>;

const numberIn = (entry: Entry, key: string): number | undefined => {
  const value = entry[key];
  return typeof value === 'number' ? value : undefined;
};

/** `physical_diffuse: 0.002` in the note of a tolerance holds for the rows of that model. */
function notedFor(entry: Entry, model: unknown): number | undefined {
  if (typeof entry.note !== 'string' || typeof model !== 'string') return undefined;
  const [, named, figure] = /^(\w+): ([\d.e-]+)$/.exec(entry.note) ?? [];
  return named === model ? Number(figure) : undefined;
}

/**
 * The tolerance a file states for a field; undefined where it states none.
 *
 * @param of  the `tolerance` of the file.
 * @param model  of the row, for a note that names it.
 */
export function toleranceOf(of: unknown, field: string, model?: unknown): Tolerance | undefined {
  const entry = typeof of === 'object' && of !== null ? (of as Record<string, unknown>)[field] : undefined;
  if (typeof entry !== 'object' || entry === null) return undefined;
  const e = entry as Entry;
  return {
    sameAbs: notedFor(e, model) ?? numberIn(e, 'same_model_abs'),
    sameRel: numberIn(e, 'same_model_rel'),
    okAbs: numberIn(e, 'acceptable_abs'),
    okRel: numberIn(e, 'acceptable_rel'),
  };
}
