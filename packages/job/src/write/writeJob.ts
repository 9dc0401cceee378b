import type { z } from 'zod';
import { anatomy } from '../schema/anatomy.ts';
import { type Job, jobSchema } from '../schema/job.ts';

/**
 * A job as text: JSON, two spaces, a line break at the end.
 *
 * The same job gives the same text whatever order its fields were set in: known fields in the order of the
 * schema, ids and unknown fields in alphabetical order. Unknown fields are kept; values that are not set are left out.
 */
export function writeJob(job: Job): string {
  return `${JSON.stringify(inOrder(jobSchema, job), null, 2)}\n`;
}

function inOrder(schema: z.core.$ZodType | undefined, value: unknown): unknown {
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
