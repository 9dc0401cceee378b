import { processIo } from './io.ts';
import { type Register, runCommandLine } from './program.ts';

/** Every command of `eaveline`, in the order `--help` lists them. */
const commands: readonly Register[] = [];

/** Runs one command line against the real world; the exit code is set, never forced, so that output is flushed. */
export async function main(argv: readonly string[]): Promise<void> {
  await runCommandLine(argv, commands, processIo());
}
