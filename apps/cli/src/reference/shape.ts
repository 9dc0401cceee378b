import { calcNamed } from '../calc/registry.ts';
import { camelKeys } from '../camelKeys.ts';
import type { Tally } from './tally.ts';

export type Json = Readonly<Record<string, unknown>>;

/** A file as it was found: its path below the folder, and what it holds. */
export interface ReferenceFile {
  readonly name: string;
  /** Full path, for files that lie beside it. */
  readonly path: string;
  readonly document: Json;
}

/** A file that a reference file names. */
export interface FoundFile {
  readonly path: string;
  readonly bytes: Uint8Array;
}

/** Finds a file by the name a reference file gives it; undefined where it is nowhere about. */
export type FindFile = (from: ReferenceFile, name: string) => FoundFile | undefined;

/** One shape of reference file: how to know it, and how to try what it holds. */
export interface ReferenceShape {
  /** What the file is about, for the list of files. */
  readonly about: string;
  knows(document: Json): boolean;
  run(file: ReferenceFile, tally: Tally, find: FindFile): void;
}

export const isJson = (value: unknown): value is Json =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** The objects of a list; none where there is no list. */
export const rowsIn = (value: unknown): readonly Json[] => (Array.isArray(value) ? value.filter(isJson) : []);

export const idOf = (row: Json, at: number) => String(row.id ?? row.name ?? row.module ?? `row ${at + 1}`);

export const without = (row: Json, keys: readonly string[]): Json =>
  Object.fromEntries(Object.entries(row).filter(([key]) => !keys.includes(key)));

/** Thrown where a quantity did not answer; the message is the whole reason. */
export class NoAnswer extends Error {
  override readonly name = 'NoAnswer';
}

/**
 * Asks one quantity, with the keys of a reference file.
 *
 * @throws {NoAnswer} with the facts of the refusal.
 */
export function ask(name: string, row: Json, files?: ReadonlyMap<string, Uint8Array>): Json {
  const calc = calcNamed(name);
  if (calc === undefined) throw new NoAnswer(`eaveline calc has no ${name}`);
  const answer = calc.answer(camelKeys(row), files);
  if ('result' in answer) return answer.result;
  const [{ at, got, want }] = answer.problems;
  throw new NoAnswer(`${at} is ${JSON.stringify(got)}; it has to be ${want}`);
}

/** The same, with the refusal as words instead of an exception. */
export function asked(name: string, row: Json, files?: ReadonlyMap<string, Uint8Array>): Json | string {
  try {
    return ask(name, row, files);
  } catch (error) {
    if (error instanceof NoAnswer) return error.message;
    throw error;
  }
}
