import { z } from 'zod';

/**
 * An object schema that keeps fields it does not know.
 *
 * A job written by a newer Eaveline, or annotated by hand, must come back out of an older one with nothing
 * lost. The type stays the closed one, so that a misspelled field is still an error in our own code.
 */
export function open<S extends z.ZodRawShape>(shape: S): z.ZodObject<S> {
  return z.looseObject(shape) as unknown as z.ZodObject<S>;
}

/** A map keyed by id. Ids, not positions, so that two people can edit at once. */
export function byId<V extends z.ZodType>(value: V): z.ZodRecord<z.ZodString, V> {
  return z.record(z.string().regex(/^[a-z0-9][a-z0-9-]*$/, 'lower-case letters, digits and hyphens'), value);
}

/** A length, a mass, a rating: finite and above zero. */
export const aboveZero = z.number().positive();
/** A count or a share that may be nothing: finite and not below zero. */
export const zeroOrMore = z.number().nonnegative();
/** A whole number from one. */
export const count = z.int().positive();
/** A share of one. */
export const share = z.number().min(0).max(1);
/** Civil date, `2026-05-15`. */
export const civilDate = z.iso.date();
/** An instant, `2026-05-15T06:10:00Z`. */
export const instant = z.iso.datetime({ offset: true });
