import { createReadStream } from 'node:fs';
import { mkdir, rename, rm, stat, writeFile } from 'node:fs/promises';
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

/** Largest input read: a text of more cannot be held in one piece. */
const MOST_BYTES = 500_000_000;

/** Everything of a stream; ends with `EFBIG` where it does not end by itself in time. */
export async function readAll(stream: AsyncIterable<Uint8Array | string>, mostBytes = MOST_BYTES): Promise<Buffer> {
  const parts: Uint8Array[] = [];
  let bytes = 0;
  for await (const part of stream) {
    const more = typeof part === 'string' ? Buffer.from(part) : part;
    bytes += more.length;
    if (bytes > mostBytes) throw Object.assign(new Error('too large'), { code: 'EFBIG' });
    parts.push(more);
  }
  return Buffer.concat(parts);
}

/** A file as bytes; the system leaves the path out of some of its errors. */
async function readWhole(path: string): Promise<Buffer> {
  try {
    return await readAll(createReadStream(path));
  } catch (error) {
    throw error instanceof Error ? Object.assign(error, { path }) : error;
  }
}

/**
 * Makes a folder and those above it, from the top. One at a time: asked for all at once, Node never comes back where
 * the system makes no folders, as in /proc.
 */
async function makeFolder(path: string): Promise<void> {
  const there = await stat(path).catch((error: NodeJS.ErrnoException) => {
    if (error.code === 'ENOENT') return undefined;
    throw error;
  });
  if (there?.isDirectory()) return;
  if (there) throw Object.assign(new Error('not a folder'), { code: 'EEXIST', path });
  await makeFolder(dirname(path));
  await mkdir(path).catch((error: NodeJS.ErrnoException) => {
    // another run may have made it meanwhile
    if (error.code !== 'EEXIST') throw error;
  });
}

/** Beside the target first, then renamed over it: a reader sees the old file or the new one, never half of either. */
async function writeWhole(path: string, data: string | Uint8Array): Promise<void> {
  await makeFolder(dirname(path));
  const half = join(dirname(path), `.${basename(path)}.${process.pid}.half`);
  try {
    await writeFile(half, data);
    await rename(half, path);
  } catch (error) {
    await rm(half, { force: true });
    // the reader asked for this file and knows nothing of the other
    throw error instanceof Error ? Object.assign(error, { path, syscall: 'write' }) : error;
  }
}

/** The real world: disk, standard streams and the clock of this process. */
export function processIo(): Io {
  return {
    readText: async (path) => (await readWhole(path)).toString('utf8'),
    readBytes: readWhole,
    readStdin: async () => (await readAll(process.stdin)).toString('utf8'),
    writeFile: writeWhole,
    print: (text) => void process.stdout.write(withNewline(text)),
    now: () => new Date(),
    answer({ text, verdict }) {
      (verdict === 2 ? process.stderr : process.stdout).write(withNewline(text));
      process.exitCode = verdict;
    },
  };
}
