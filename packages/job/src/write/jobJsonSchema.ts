import { z } from 'zod';
import { JOB_VERSION, jobSchema } from '../schema/job.ts';

/**
 * The job document as JSON Schema, draft 2020-12, for editors and other programs.
 *
 * It says what may be written: fields with a default may be left out, fields it does not name may be added.
 * What names what, and that a conductor has one size and not two, is beyond it: `parseJob` judges that.
 */
export function jobJsonSchema(): Record<string, unknown> {
  const { $schema, ...rest } = z.toJSONSchema(jobSchema, { target: 'draft-2020-12', io: 'input' });
  return {
    $schema,
    title: `Eaveline job, version ${JOB_VERSION}`,
    description:
      'What people decided or measured for one job: facts, choices, records. Nothing that can be worked out. ' +
      'Units stand at the end of the names: M metres, Mm millimetres, Mm2 square millimetres, Deg degrees, ' +
      'C degrees Celsius, A amperes, V volts, VA volt-amperes, W watts, Ohm ohms.',
    ...rest,
  };
}
