import { readFile } from 'node:fs/promises';
import { type Fonts, fontNames } from '@eaveline/papers';

/** Where the shipped fonts lie; the same way from the source of this file and from its bundle. */
const FOLDER = new URL('../../../packages/papers/fonts/', import.meta.url);

/** The font files of the papers, read once. */
export function loadFonts(): Promise<Fonts> {
  loaded ??= readAll();
  return loaded;
}

let loaded: Promise<Fonts> | undefined;

async function readAll(): Promise<Fonts> {
  const files = await Promise.all(
    fontNames.map(async (name) => [name, new Uint8Array(await readFile(new URL(`${name}.woff`, FOLDER)))] as const),
  );
  return Object.fromEntries(files) as unknown as Fonts;
}
