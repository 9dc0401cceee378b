// Writes src/type/widths.ts from the faces in this folder.
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { readWoff } from './readWoff.ts';

const here = new URL('./', import.meta.url);
/** European letters, Greek, punctuation, figures, currencies, arrows and signs of mathematics. */
const kept = (code: number): boolean =>
  (code >= 0x20 && code < 0x250) ||
  (code >= 0x370 && code < 0x400) ||
  (code >= 0x1e80 && code < 0x1e86) ||
  (code >= 0x2000 && code < 0x2300) ||
  (code >= 0x2500 && code < 0x27c0);

const table = Object.fromEntries(
  readdirSync(here)
    .filter((file) => file.endsWith('.woff'))
    .sort()
    .map((file) => {
      const { unitsPerEm, capHeight, advances } = readWoff(readFileSync(new URL(file, here)));
      const codes = [...advances.keys()].filter(kept).sort((a, b) => a - b);
      return [file.replace('.woff', ''), { unitsPerEm, capHeight, stretches: stretches(codes, advances) }];
    }),
);
const words = `/** One font's measures in its own units; advances as stretches of consecutive code points: the first, then the advances. */
export interface Widths {
  readonly unitsPerEm: number;
  readonly capHeight: number;
  readonly stretches: readonly (readonly [firstCode: number, advances: string])[];
}

/** Made by fonts/makeWidths.ts from the shipped files; not to be edited. */
export const widths = ${JSON.stringify(table)} satisfies Readonly<Record<string, Widths>>;
`;
writeFileSync(new URL('../src/type/widths.ts', here), words);

/** Consecutive code points as one stretch: first code point, then the advances. */
function stretches(codes: number[], advances: ReadonlyMap<number, number>): [number, string][] {
  const found: { first: number; advances: number[] }[] = [];
  for (const code of codes) {
    const last = found.at(-1);
    const advance = advances.get(code) as number;
    if (last && last.first + last.advances.length === code) last.advances.push(advance);
    else found.push({ first: code, advances: [advance] });
  }
  return found.map((stretch) => [stretch.first, stretch.advances.join(' ')]);
}
