import { Refusal } from '@eaveline/physics';
import { z } from 'zod';

/** An instant in UTC as a row writes it. */
export const utcInstant = z
  .string()
  .meta({ unit: 'ISO 8601, UTC', description: 'instant, such as 2025-06-13T18:32:49Z' });

const SHAPE = /^(\d{4}-\d{2}-\d{2})T\d{2}:\d{2}(:\d{2}(\.\d+)?)?Z$/;

/** UNIX ms of an instant. @throws {Refusal} `inconsistent` where it is no instant, or not said to be UTC. */
export function instantMs(written: string): number {
  const ms = SHAPE.test(written) ? Date.parse(written) : Number.NaN;
  // a 30 February would be taken for a day of March
  if (!Number.isFinite(ms) || new Date(ms).toISOString().slice(0, 10) !== written.slice(0, 10)) {
    const mend = 'Write it in UTC, with T between date and time and Z at the end.';
    throw new Refusal({
      code: 'inconsistent',
      at: 'timeUtc',
      got: written,
      want: 'an instant such as 2025-06-13T18:32:49Z',
      mend,
    });
  }
  return ms;
}

/** An instant as a result shows it; nothing where there is none. */
export const isoInstant = (ms: number | undefined) => (ms === undefined ? null : new Date(ms).toISOString());
