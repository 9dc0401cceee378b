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

/**
 * Figures of one house lie between these. What lies outside is a slip of the keyboard or a hostile file: carried on,
 * it overflows a sum or lets a loop over places run for days.
 */
export const SMALLEST = 1e-9;
const LARGEST = 1e6;
/** More pieces of one sort in a row than any house takes. */
const MOST_PLACES = 1000;
/** More drops than any maker's trunk is laid with; the rules judge what it may carry, long before. */
const MOST_DROPS = 200;

/** A figure of either sign: a place along the eave, a coefficient. */
export const signed = z.number().min(-LARGEST).max(LARGEST);
/** A length, a mass, a rating: above zero. */
export const aboveZero = z.number().min(SMALLEST).max(LARGEST);
/** An amount that may be nothing: not below zero. */
export const zeroOrMore = z.number().min(0).max(LARGEST);
/** A whole number from one. */
export const count = z.int().min(1).max(MOST_PLACES);
/** A whole number that may be nothing. */
export const countOrNone = z.int().min(0).max(MOST_PLACES);
/** Number of a drop along its trunk, from one. */
export const dropNumber = z.int().min(1).max(MOST_DROPS);
/** A place on a roof or by a house, m from its origin. */
export const placeM = z.number().min(-MOST_PLACES).max(MOST_PLACES);
/** Distance of things that stand side by side many times over, mm: rafters, drops, feet. */
export const spacingMm = z.number().min(50).max(20_000);
/** Place of a module in its row, from one: longer rows than this stand on no house. */
export const placeInRow = z.int().min(1).max(200);
/** An edge of a roof plane, m. */
export const edgeM = z.number().min(SMALLEST).max(500);
/** A share of one. */
export const share = z.number().min(0).max(1);
/** A person's name: a word without a name behind it is nobody's. */
export const personName = z.string().regex(/\S/, 'a name');
/** Civil date, `2026-05-15`. */
export const civilDate = z.iso.date();
/** An instant, `2026-05-15T06:10:00Z`. */
export const instant = z.iso.datetime({ offset: true });
