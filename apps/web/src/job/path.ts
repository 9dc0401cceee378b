/** The value at a path of a document; undefined where the path leads nowhere. */
export function valueAt(document: unknown, path: readonly string[]): unknown {
  let at: unknown = document;
  for (const step of path) {
    if (typeof at !== 'object' || at === null) return undefined;
    at = (at as Readonly<Record<string, unknown>>)[step];
  }
  return at;
}

/**
 * The document with another value at a path; what is not on the way stays the same object.
 * `undefined` takes the field away. Groups that are missing on the way are made; lists are kept lists.
 */
export function withValueAt<T>(document: T, path: readonly string[], value: unknown): T {
  const [step, ...rest] = path;
  if (step === undefined) return value as T;
  const group = typeof document === 'object' && document !== null ? document : {};
  const inner = withValueAt((group as Readonly<Record<string, unknown>>)[step], rest, value);
  if (Array.isArray(group)) return group.map((item, i) => (String(i) === step ? inner : item)) as T;
  const { [step]: _gone, ...others } = group as Record<string, unknown>;
  if (inner === undefined) return others as T;
  return { ...(group as object), [step]: inner } as T;
}

/** `facts.supply.loopOhm` as steps. Ids hold no dots, so a dot always parts two steps. */
export function stepsOf(at: string): string[] {
  return at.split('.').filter((step) => step !== '');
}
