import { mkdir, readFile, rename, rm, writeFile } from 'node:fs/promises';
import { basename, dirname, join } from 'node:path';
import process from 'node:process';

/** 0: nothing fails, though questions may be open. 1: something fails. 2: could not run (bad command line, unreadable input). */
export type Verdict = 0 | 1 | 2;

/** What a command comes to: the words for the reader and the verdict for the shell. */
export interface Outcome {
  readonly text: string;
  readonly verdict: Verdict;
}

/**
 * All a command may do to the world. A command itself is a pure function to an `Outcome`;
 * its `register` function fetches the inputs through this seam and hands the outcome to `answer`.
 */
export interface Io {
  /** A file as UTF-8 text. Rejects with the system's error (`ENOENT` and so on). */
  readText(path: string): Promise<string>;
  /** A file as bytes. Rejects with the system's error. */
  readBytes(path: string): Promise<Uint8Array>;
  /** Everything on standard input, as UTF-8 text. */
  readStdin(): Promise<string>;
  /** Writes a whole file or none of it; folders on the way are made. */
  writeFile(path: string, data: string | Uint8Array): Promise<void>;
  /** One text to standard output, for commands that speak while they run. A newline is added where it lacks one. */
  print(text: string): void;
  /** The clock, for stamps on papers and stored jobs. Figures never depend on it. */
  now(): Date;
  /** Ends the command: main prints the text (verdict 2 to standard error) and exits with the verdict. */
  answer(outcome: Outcome): void;
}

/** Signs that steer a terminal; a name in a job could hold them. Line ends and tabs stay. */
// biome-ignore lint/suspicious/noControlCharactersInRegex: these are what is looked for
const STEERING = /[\u0000-\u0008\u000B-\u001F\u007F-\u009F\u202A-\u202E\u2066-\u2069]/g;

/** A text as it may stand on a terminal. */
export function plainSigns(text: string): string {
  return text.replace(STEERING, '\uFFFD');
}

const withNewline = (text: string) => plainSigns(text === '' || text.endsWith('\n') ? text : `${text}\n`);

async function readAll(stream: AsyncIterable<Uint8Array | string>): Promise<string> {
  const parts: Uint8Array[] = [];
  for await (const part of stream) parts.push(typeof part === 'string' ? Buffer.from(part) : part);
  return Buffer.concat(parts).toString('utf8');
}

/** Beside the target first, then renamed over it: a reader sees the old file or the new one, never half of either. */
async function writeWhole(path: string, data: string | Uint8Array): Promise<void> {
  await mkdir(dirname(path), { recursive: true });
  const half = join(dirname(path), `.${basename(path)}.${process.pid}.half`);
  try {
    await writeFile(half, data);
    await rename(half, path);
  } catch (error) {
    await rm(half, { force: true });
    throw error;
  }
}

/** The real world: disk, standard streams and the clock of this process. */
export function processIo(): Io {
  return {
    readText: (path) => readFile(path, 'utf8'),
    readBytes: (path) => readFile(path),
    readStdin: () => readAll(process.stdin),
    writeFile: writeWhole,
    print: (text) => void process.stdout.write(withNewline(text)),
    now: () => new Date(),
    answer({ text, verdict }) {
      (verdict === 2 ? process.stderr : process.stdout).write(withNewline(text));
      process.exitCode = verdict;
    },
  };
}
