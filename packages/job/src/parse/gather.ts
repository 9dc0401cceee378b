/** A document as read from JSON, before its shape is known to be right. */
export type Raw = Readonly<Record<string, unknown>>;

export interface Gathered {
  readonly path: string;
  readonly value: unknown;
  /** What each `*` of the pattern stood for. */
  readonly ids: readonly string[];
}

/** True for a group of named values: neither a list nor nothing. */
export function isRaw(value: unknown): value is Raw {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

/** A group's own field; never one it inherits. */
export function fieldOf(raw: unknown, key: string): unknown {
  return typeof raw === 'object' && raw !== null && Object.hasOwn(raw, key) ? (raw as Raw)[key] : undefined;
}

/**
 * Every value a pattern reaches, `choices.trunks.*.homeRun.cableSheet`; `*` stands for every key or place.
 * Works on documents whose shape is wrong elsewhere, so that one fault does not hide another.
 */
export function gather(raw: unknown, pattern: string): Gathered[] {
  let found: Gathered[] = [{ path: '', value: raw, ids: [] }];
  for (const step of pattern.split('.')) {
    found = found.flatMap(({ path, value, ids }) => {
      if (typeof value !== 'object' || value === null) return [];
      const keys = step === '*' ? Object.keys(value) : Object.hasOwn(value, step) ? [step] : [];
      return keys.map((key) => ({
        path: path === '' ? key : `${path}.${key}`,
        value: (value as Raw)[key],
        ids: step === '*' ? [...ids, key] : ids,
      }));
    });
  }
  return found.filter(({ value }) => value !== undefined);
}

/** The named groups under a pattern that ends in a map. */
export function groups(raw: unknown, pattern: string): { path: string; id: string; group: Raw }[] {
  return gather(raw, `${pattern}.*`).flatMap(({ path, value, ids }) =>
    isRaw(value) ? [{ path, id: ids.at(-1) ?? '', group: value }] : [],
  );
}
