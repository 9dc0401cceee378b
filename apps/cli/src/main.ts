import { existsSync } from 'node:fs';
import process from 'node:process';
import { fileURLToPath } from 'node:url';
import type { Job } from '@eaveline/job';
import { firstJobs, validateJob } from './bookOfJobs.ts';
import { registerCalc } from './commands/calc.ts';
import { registerCheck } from './commands/check.ts';
import { registerNew } from './commands/new.ts';
import { pack, registerPack } from './commands/pack.ts';
import { registerPlan } from './commands/plan.ts';
import { registerRead } from './commands/read.ts';
import { registerSchema } from './commands/schema.ts';
import { registerServe, type ServeParts } from './commands/serve.ts';
import { registerSurvey } from './commands/survey.ts';
import { endWithReader } from './endWithReader.ts';
import { loadFonts } from './fonts.ts';
import { processIo } from './io.ts';
import { plansAtHand } from './plansAtHand.ts';
import { type Register, runCommandLine } from './program.ts';
import { untilStopped } from './untilStopped.ts';

/** Put in by the build. */
declare const EAVELINE_ENGINE: string | undefined;
/** The state of the rooms that make a plan; run from its sources the command has no page's engine. */
const ENGINE = typeof EAVELINE_ENGINE === 'string' ? EAVELINE_ENGINE : 'from its sources';

/** Where the sheets are built to; the same way from the source of this file and from its bundle. */
const SHEETS = fileURLToPath(new URL('../../web/dist/site', import.meta.url));

const plans = plansAtHand(
  ENGINE,
  () => new Date(),
  (error) => process.stderr.write(`${error.stack}\n`),
);

const serveParts: ServeParts = {
  demoJobs: firstJobs,
  validate: validateJob,
  webDir: existsSync(`${SHEETS}/index.html`) ? SHEETS : undefined,
  summary: (document) => plans.workOut(document).checks.tally,
  pack: async (document, drawnAt) => (await pack(document as Job, {}, drawnAt, await loadFonts())).drawn.pdf,
  plans,
  untilStopped,
};

/** Every command of `eaveline`, in the order `--help` lists them. */
const commands: readonly Register[] = [
  registerNew,
  registerCheck,
  registerPlan,
  registerPack(loadFonts),
  registerSurvey(loadFonts),
  registerSchema,
  registerCalc,
  registerRead,
  registerServe(serveParts),
];

/** Runs one command line against the real world; the exit code is set, never forced, so that output is flushed. */
export async function main(argv: readonly string[]): Promise<void> {
  endWithReader(process.stdout);
  await runCommandLine(argv, commands, processIo());
}
