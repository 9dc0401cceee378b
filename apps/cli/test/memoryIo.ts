import type { Io, Outcome } from '../src/io.ts';
import { type Register, runCommandLine } from '../src/program.ts';

/** A world in memory: files given beforehand, everything said and written kept. */
export function memoryIo(files: Record<string, string | Uint8Array> = {}) {
  const printed: string[] = [];
  const answers: Outcome[] = [];
  const missing = (path: string) => Object.assign(new Error(`no ${path}`), { code: 'ENOENT', path });
  const bytesOf = (path: string) => {
    const file = files[path];
    if (file === undefined) throw missing(path);
    return typeof file === 'string' ? new TextEncoder().encode(file) : file;
  };
  const io: Io = {
    readText: async (path) => new TextDecoder().decode(bytesOf(path)),
    readBytes: async (path) => bytesOf(path),
    readStdin: async () => new TextDecoder().decode(bytesOf('-')),
    writeFile: async (path, data) => {
      files[path] = data;
    },
    print: (text) => void printed.push(text),
    now: () => new Date(Date.UTC(2026, 4, 12, 6)),
    answer: (outcome) => void answers.push(outcome),
  };
  return { io, files, printed, answers };
}

/** Runs one command line in a world of memory. */
export async function runInMemory(register: Register, files: Record<string, string | Uint8Array>, ...argv: string[]) {
  const world = memoryIo(files);
  await runCommandLine(argv, [register], world.io);
  const answer = world.answers.at(-1);
  if (answer === undefined) throw new Error('the command gave no answer');
  return { ...world, ...answer };
}
