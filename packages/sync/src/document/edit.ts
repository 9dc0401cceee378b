import { same } from './same.ts';

/** One place of a job that is, or was, changed. `undefined` means that nothing stands there. */
export interface Edit {
  /** `['choices', 'trunks', 'a', 'feedDrop']`. */
  readonly path: readonly string[];
  readonly before: unknown;
  readonly after: unknown;
}

type Branch = Readonly<Record<string, unknown>>;

/** Is it a map of named things? Lists are single values here: a list of lines or of lengths is meant as a whole. */
export function isBranch(value: unknown): value is Branch {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

/**
 * What differs between two states of a job, place by place.
 *
 * A thing that came or went whole is one edit, not one for each of its fields.
 */
export function editsBetween(before: unknown, after: unknown, path: readonly string[] = []): Edit[] {
  if (before === after) return [];
  if (!isBranch(before) || !isBranch(after)) return same(before, after) ? [] : [{ path, before, after }];
  const names = new Set([...Object.keys(before), ...Object.keys(after)]);
  return [...names].flatMap((name) => editsBetween(before[name], after[name], [...path, name]));
}

/** What stands at a place; undefined where nothing does. */
export function valueAt(root: unknown, path: readonly string[]): unknown {
  return path.reduce<unknown>(
    (value, name) => (isBranch(value) && Object.hasOwn(value, name) ? value[name] : undefined),
    root,
  );
}

/** The same job with something else at one place. The parts in between are made where they are missing. */
export function withAt(root: unknown, path: readonly string[], value: unknown): unknown {
  const [name, ...rest] = path;
  if (name === undefined) return value;
  const branch: Branch = isBranch(root) ? root : {};
  const below = withAt(branch[name], rest, value);
  if (below !== undefined) return { ...branch, [name]: below };
  const { [name]: _, ...others } = branch;
  return others;
}
