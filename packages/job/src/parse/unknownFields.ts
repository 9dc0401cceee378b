import type { z } from 'zod';
import { anatomy } from '../schema/anatomy.ts';
import { jobSchema } from '../schema/job.ts';
import type { Remarked } from './remark.ts';

/** Fields this version does not know, spelled as the schema might: kept, and used by nothing. */
export function unknownFields(raw: unknown): Remarked[] {
  const found: string[] = [];
  walk(jobSchema, raw, '', found);
  return found.map((at) => ({
    severity: 'note',
    at,
    found: 'a field this version does not know',
    wanted: 'a known name',
    mend: 'It is kept as it is. If it was meant for something, look at its spelling.',
  }));
}

function walk(schema: z.core.$ZodType, value: unknown, path: string, found: string[]): void {
  if (typeof value !== 'object' || value === null) return;
  const parts = anatomy(schema, value);
  if (parts.kind === 'leaf') return;
  for (const [key, inner] of Object.entries(value)) {
    const here = path === '' ? key : `${path}.${key}`;
    if (parts.kind !== 'group') walk(parts.of, inner, here, found);
    else if (Object.hasOwn(parts.fields, key)) walk(parts.fields[key] as z.core.$ZodType, inner, here, found);
    else found.push(here);
  }
}
