import { readFileSync } from 'node:fs';
import { type Fonts, fontNames } from '../src/type/index.ts';

/** The shipped font files, for tests; the product's rooms are handed the bytes by an app. */
export const fonts = Object.fromEntries(
  fontNames.map((name) => [name, new Uint8Array(readFileSync(new URL(`../fonts/${name}.woff`, import.meta.url)))]),
) as unknown as Fonts;
