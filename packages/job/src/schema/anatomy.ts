import type { z } from 'zod';

/** How a schema is built, as far as walking a document needs it. */
export type Anatomy =
  | { readonly kind: 'group'; readonly fields: Readonly<Record<string, z.core.$ZodType>> }
  | { readonly kind: 'map'; readonly of: z.core.$ZodType }
  | { readonly kind: 'list'; readonly of: z.core.$ZodType }
  | { readonly kind: 'leaf' };

/** What a schema is made of at the top, seen through what only adds a default or leave to be absent. */
export function anatomy(schema: z.core.$ZodType, value: unknown): Anatomy {
  const def = (schema as z.core.$ZodTypes)._zod.def;
  switch (def.type) {
    case 'optional':
    case 'default':
      return anatomy(def.innerType, value);
    case 'object':
      return { kind: 'group', fields: def.shape };
    case 'record':
      return { kind: 'map', of: def.valueType };
    case 'array':
      return { kind: 'list', of: def.element };
    case 'union':
      return anatomyOfOption(def.options, value);
    default:
      return { kind: 'leaf' };
  }
}

/** Of groups told apart by `kind`, the one the value says it is. */
function anatomyOfOption(options: readonly z.core.$ZodType[], value: unknown): Anatomy {
  if (typeof value !== 'object' || value === null || !('kind' in value)) return { kind: 'leaf' };
  for (const option of options) {
    const parts = anatomy(option, value);
    const kind = parts.kind === 'group' ? parts.fields.kind : undefined;
    const def = kind && (kind as z.core.$ZodTypes)._zod.def;
    if (def?.type === 'literal' && def.values.some((literal) => literal === value.kind)) return parts;
  }
  return { kind: 'leaf' };
}
