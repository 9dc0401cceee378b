import { Command, CommanderError } from 'commander';
import type { Io } from './io.ts';
import { VERSION } from './version.ts';

/** A command adds itself to the program; everything it does to the world goes through `io`. */
export type Register = (program: Command, io: Io) => void;

const ABOUT = `The whole job of a home solar installer: survey, design, checks, kit, day plan, tests, handover.
The licensed person decides; this command works out and says how.`;

const EXIT_CODES = `
Exit code: 0 nothing fails, 1 something fails, 2 could not run.`;

/** Errors of the system that a reader can mend, each in one line. */
const SYSTEM_WORDS: Readonly<Record<string, string>> = {
  ENOENT: 'There is no such file.',
  EISDIR: 'That is a folder; a file is wanted.',
  ENOTDIR: 'A part of that path is a file, not a folder.',
  EEXIST: 'A file stands where a folder is wanted. Nothing was written.',
  EACCES: 'This user may not open it, or not write there.',
  EPERM: 'This user may not open it, or not write there.',
  ENOSPC: 'The disk is full.',
  EROFS: 'That disk cannot be written to.',
  EFBIG: 'More than 500 MB. This is no file of a job.',
};

function systemWords(code: string, syscall: string | undefined): string | undefined {
  if (code === 'ENOENT' && syscall === 'write') return 'No file can be written there.';
  if (code === 'ENOENT' && syscall === 'mkdir') return 'No folder can be made there. Nothing was written.';
  return SYSTEM_WORDS[code] ?? (syscall === undefined ? undefined : `The system refuses it (${syscall}: ${code}).`);
}

/** One line for a refusal by the system; the whole stack for a mistake of ours, which is meant to be loud. */
export function couldNotRun(error: unknown): string {
  if (!(error instanceof Error)) return `Could not run: ${String(error)}`;
  const { code, path, syscall } = error as NodeJS.ErrnoException;
  const words = code === undefined ? undefined : systemWords(code, syscall);
  if (words !== undefined) return path === undefined ? words : `${path}: ${words}`;
  if (error.name === 'Refusal' || error.name === 'CannotServe') return error.message;
  return error.stack ?? error.message;
}

/**
 * The `eaveline` command with the given commands registered; it neither prints errors nor exits by itself.
 *
 * @param complain receives what commander has to say about a command line it does not understand.
 */
export function makeProgram(registers: readonly Register[], io: Io, complain: (text: string) => void): Command {
  const program = new Command('eaveline')
    .description(ABOUT)
    .version(VERSION, '-V, --version', 'print the version')
    .helpOption('-h, --help', 'print this help')
    .helpCommand('help [command]', 'print the help of one command')
    .addHelpText('after', EXIT_CODES)
    .exitOverride()
    // a command made by program.command() takes these settings over, so they stand before the commands
    .configureOutput({ writeOut: (text) => io.print(text), writeErr: complain });
  for (const register of registers) register(program, io);
  return program;
}

/**
 * Reads one command line and runs it.
 *
 * @param argv what follows the program's name, as typed.
 */
export async function runCommandLine(argv: readonly string[], registers: readonly Register[], io: Io): Promise<void> {
  let complaint = '';
  const program = makeProgram(registers, io, (text) => {
    complaint += text;
  });
  try {
    if (argv.length === 0) {
      program.outputHelp({ error: true });
      io.answer({ text: complaint, verdict: 2 });
      return;
    }
    await program.parseAsync([...argv], { from: 'user' });
  } catch (error) {
    if (!(error instanceof CommanderError)) io.answer({ text: couldNotRun(error), verdict: 2 });
    else if (error.exitCode !== 0)
      io.answer({ text: `${complaint || error.message}\nTry eaveline --help.`, verdict: 2 });
  }
}
