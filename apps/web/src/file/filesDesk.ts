import { type FileLike, type FileRead, readJobFile } from './readJobFile.ts';

/** A file that was brought, with its number in the order it came. */
export interface Brought extends FileRead {
  readonly no: number;
  /** What became of it, in words; undefined while it waits for an answer, or to be kept. */
  readonly said?: string;
}

let brought: readonly Brought[] = [];
let count = 0;
const listeners = new Set<() => void>();

function become(next: readonly Brought[]) {
  brought = next;
  for (const listener of listeners) listener();
}

/** Files that were opened or dropped and are not put away yet: they outlive the way from a sheet to the Book. */
export const filesDesk = {
  state: () => brought,
  subscribe(listener: () => void) {
    listeners.add(listener);
    return () => void listeners.delete(listener);
  },
  /** Reads files one after another. */
  async bring(files: readonly FileLike[]): Promise<void> {
    for (const file of files) {
      const read = await readJobFile(file);
      count += 1;
      become([...brought, { ...read, no: count }]);
    }
  },
  say(no: number, said: string) {
    become(brought.map((each) => (each.no === no ? { ...each, said } : each)));
  },
  putAway(no: number) {
    become(brought.filter((each) => each.no !== no));
  },
} as const;
