import { jobJsonSchema } from '@eaveline/job';
import type { Outcome } from '../io.ts';
import type { Register } from '../program.ts';

const SCHEMAS: Readonly<Record<string, () => Record<string, unknown>>> = { job: jobJsonSchema };

/** A published schema, as JSON Schema draft 2020-12. */
export function schema(name: string): Outcome {
  const make = SCHEMAS[name];
  return make === undefined
    ? { text: `There is no schema '${name}'. There is: ${Object.keys(SCHEMAS).join(', ')}.`, verdict: 2 }
    : { text: JSON.stringify(make(), null, 2), verdict: 0 };
}

/** `eaveline schema job`. */
export const registerSchema: Register = (program, io) => {
  program
    .command('schema')
    .description('print the JSON Schema of a document: job')
    .argument('<name>', 'job')
    .action((name: string) => io.answer(schema(name)));
};
