import type { z } from 'zod';
import { anatomy } from '../schema/anatomy.ts';

/**
 * A value with its fields in the order of the schema, ids and unknown fields in alphabetical order: the same whatever
 * order they were set in, or whichever store they lay in.
 */
export function inOrder(schema: z.core.$ZodType | undefined, value: unknown): unknown {
  if (typeof value !== 'object' || value === null) return value;
  const parts = schema ? anatomy(schema, value) : ({ kind: 'leaf' } as const);
  if (Array.isArray(value)) return value.map((each) => inOrder(parts.kind === 'list' ? parts.of : undefined, each));

  const fields = parts.kind === 'group' ? parts.fields : {};
  const keys = Object.keys(fields).filter((key) => Object.hasOwn(value, key));
  const others = Object.keys(value)
    .filter((key) => !Object.hasOwn(fields, key))
    .sort();
  const ordered: Record<string, unknown> = {};
  for (const key of [...keys, ...others]) {
    const inner = parts.kind === 'map' ? parts.of : fields[key];
    ordered[key] = inOrder(inner, (value as Record<string, unknown>)[key]);
  }
  return ordered;
}
