import { existsSync, readdirSync, readFileSync, statSync } from 'node:fs';
import { basename, dirname, join, relative, resolve, sep } from 'node:path';
import { type FindFile, type FoundFile, isJson, type ReferenceFile } from './shape.ts';

/** Weather lies a few folders away at most; a whole disk is not searched. */
const DEEPEST = 5;

/** A search for weather gives up beyond this many files. */
const MOST = 20_000;

/** Entries of a folder, sorted; none where it may not be opened. */
function entriesOf(dir: string, denied: string[]) {
  try {
    return readdirSync(dir, { withFileTypes: true }).sort((a, b) => (a.name < b.name ? -1 : 1));
  } catch (error) {
    if (!(error instanceof Error && 'code' in error && (error.code === 'EACCES' || error.code === 'EPERM')))
      throw error;
    denied.push(dir);
    return [];
  }
}

/**
 * Files below a folder, the near ones first; hidden folders and installed packages are left out.
 *
 * @param denied  receives the folders that may not be opened.
 */
function filesBelow(dir: string, deepest: number, denied: string[]): string[] {
  const files: string[] = [];
  let folders = [dir];
  for (let depth = 0; depth <= deepest && folders.length > 0; depth++) {
    const next: string[] = [];
    for (const folder of folders) {
      for (const entry of entriesOf(folder, denied)) {
        if (entry.name.startsWith('.') || entry.name === 'node_modules') continue;
        if (entry.isDirectory()) next.push(join(folder, entry.name));
        else if (entry.isFile()) files.push(join(folder, entry.name));
      }
      if (files.length > MOST) return files;
    }
    folders = next;
  }
  return files;
}

/** The JSON files below a folder, and the names of those that hold no JSON object. */
export function readReferenceFiles(dir: string): { files: ReferenceFile[]; unread: string[] } {
  const files: ReferenceFile[] = [];
  const unread: string[] = [];
  const denied: string[] = [];
  for (const path of filesBelow(dir, 20, denied).filter((each) => each.endsWith('.json'))) {
    const name = relative(dir, path);
    try {
      const document: unknown = JSON.parse(readFileSync(path, 'utf8'));
      if (isJson(document)) files.push({ name, path, document });
      else unread.push(name);
    } catch (error) {
      if (!(error instanceof SyntaxError)) throw error;
      unread.push(`${name} (no JSON)`);
    }
  }
  return { files, unread: [...unread, ...denied.map((folder) => `${folder} (may not be opened)`)] };
}

const isFile = (path: string) => existsSync(path) && statSync(path).isFile();

/** The file's folder and those above it, as far as one beyond the folder that is tried. */
function foldersAbout(path: string, dir: string): string[] {
  const top = dirname(resolve(dir));
  const folders: string[] = [];
  for (let folder = dirname(path); folders.at(-1) !== folder; folder = dirname(folder)) {
    folders.push(folder);
    if (folder === top) break;
  }
  return folders;
}

/**
 * Finds files that reference files name, such as the weather of a year: as the path stands, then from the
 * file's folder outward to the one beside `dir`, directly first and then anywhere below. A name without an
 * ending, such as the key of a table, stands for a file of that name with any ending.
 */
export function finderIn(dir: string): FindFile {
  const below = new Map<string, string[]>();
  const opened = new Map<string, FoundFile>();
  const open = (path: string): FoundFile => {
    const found = opened.get(path) ?? { path, bytes: readFileSync(path) };
    opened.set(path, found);
    return found;
  };
  return (from, name) => {
    const wanted = name.split('/').join(sep);
    if (name !== '' && isFile(resolve(dirname(from.path), wanted))) return open(resolve(dirname(from.path), wanted));
    for (const folder of foldersAbout(resolve(from.path), dir)) {
      if (isFile(join(folder, wanted))) return open(join(folder, wanted));
      const within = below.get(folder) ?? filesBelow(folder, DEEPEST, []);
      below.set(folder, within);
      const match = within.find((path) => path.endsWith(sep + wanted)) ?? within.find((path) => isNamed(path, wanted));
      if (match !== undefined) return open(match);
    }
    return undefined;
  };
}

/** `greensboro_tmy3` for `hourly/greensboro_tmy3.csv`, but no JSON: that is a table, not the weather. */
const isNamed = (path: string, key: string) =>
  !key.includes('.') && !path.endsWith('.json') && basename(path).startsWith(`${key}.`);
