import type { Change } from '../../finding.ts';

/** A copy of a document with changes made; groups that are missing on the way are made. */
export function withChanges(document: object, changes: readonly Change[]): unknown {
  const copy = JSON.parse(JSON.stringify(document)) as Record<string, unknown>;
  for (const { path, value } of changes) {
    let at = copy;
    for (const step of path.slice(0, -1)) {
      if (at[step] === undefined) at[step] = {};
      at = at[step] as Record<string, unknown>;
    }
    at[path.at(-1) as string] = value;
  }
  return copy;
}
