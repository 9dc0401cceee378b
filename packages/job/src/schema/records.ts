/** Records: what was seen on site. Never edited, only superseded by a later one that names it. */
import { z } from 'zod';
import { aboveZero, byId, instant, open, signed } from './open.ts';

const seen = {
  at: instant,
  by: z.string(),
  /** Instrument and its serial, where one was used. */
  with: z.string().optional(),
  supersedes: z.string().optional(),
  note: z.string().optional(),
};

const digest = z.string().regex(/^[0-9a-f]{16}$/, '16 hexadecimal digits');

export const recordsSchema = open({
  serials: byId(open({ ...seen, of: z.string(), serial: z.string().min(1) })).default({}),
  readings: byId(
    open({
      ...seen,
      /** Id of the test as the test sheet names it. */
      test: z.string(),
      value: signed,
      unit: z.string(),
      /** Sun in the plane and cell temperature at that moment, where they matter. */
      sunWM2: signed.optional(),
      cellC: signed.optional(),
    }),
  ).default({}),
  torques: byId(open({ ...seen, of: z.string(), newtonMetres: aboveZero })).default({}),
  photos: byId(open({ ...seen, of: z.string(), file: z.string() })).default({}),
  signatures: byId(
    open({
      ...seen,
      /** `design`, or `document:` and the id of a paper. */
      of: z.string(),
      name: z.string(),
      licence: z.string().optional(),
      /** The design that was signed, as `designBasis` gives it: the whole, and each part of it. */
      basis: digest.optional(),
      basisParts: z.record(z.string(), digest).optional(),
    }),
  ).default({}),
});

export type Records = z.infer<typeof recordsSchema>;
