import { z } from 'zod';
import { choicesSchema } from './choices.ts';
import { factsSchema } from './facts.ts';
import { instant, open } from './open.ts';
import { recordsSchema } from './records.ts';

/** The version this code writes. Older ones are lifted by `migrate`. */
export const JOB_VERSION = 1;

/**
 * The job document: what people decided or measured, and nothing that can be worked out from it.
 *
 * Unknown fields are kept. Things are keyed by id. Lengths in metres or millimetres, angles in degrees,
 * temperatures in °C, each with its unit in the name.
 */
export const jobSchema = open({
  format: z.literal('eaveline-job'),
  version: z.literal(JOB_VERSION),
  id: z.string().regex(/^[a-z0-9][a-z0-9-]*$/),
  name: z.string().min(1),
  /** Made up for show or training: every paper says so. */
  invented: z.boolean().default(false),
  firm: open({ name: z.string() }),
  customer: open({ name: z.string().optional(), phone: z.string().optional(), email: z.string().optional() }).default(
    {},
  ),
  /** One short sentence for the Book. */
  about: z.string().default(''),
  state: z.enum(['survey', 'design', 'letter', 'booked', 'on site', 'tested', 'handed over']).default('survey'),
  /** Taken off the shelves, by whom and when; nothing of it is lost, and it can be taken back. */
  archived: open({ at: instant, by: z.string() }).optional(),
  facts: factsSchema,
  choices: choicesSchema,
  records: recordsSchema.default({ serials: {}, readings: {}, torques: {}, photos: {}, signatures: {} }),
});

export type Job = z.infer<typeof jobSchema>;
/** What may be left to defaults when writing a job by hand. */
export type JobDraft = z.input<typeof jobSchema>;
