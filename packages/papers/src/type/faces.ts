import { Refusal } from '@eaveline/physics';
import type { FaceName, Weight } from '../drawing/model.ts';
import { type Widths, widths } from './widths.ts';

/** A font file of `packages/papers/fonts`, without its ending. */
export type FontName =
  | 'plain-400'
  | 'plain-700'
  | 'close-500'
  | 'close-700'
  | 'second-400'
  | 'second-700'
  | 'symbol-400'
  | 'symbol-greek-400';

export const fontNames = Object.keys(widths) as readonly FontName[];

/** The bytes of every font file; whoever owns a disk or a network reads them. */
export type Fonts = Readonly<Record<FontName, Uint8Array>>;

/** Which file letters a face, and which stand in for it, in this order, where it lacks a sign. */
const chains: Readonly<Record<FaceName, Readonly<Record<Weight, readonly FontName[]>>>> = {
  plain: { 400: ['plain-400', 'second-400'], 700: ['plain-700', 'second-700'] },
  close: { 400: ['close-500'], 700: ['close-700'] },
  symbol: {
    400: ['symbol-400', 'symbol-greek-400', 'second-400'],
    700: ['symbol-400', 'symbol-greek-400', 'second-700'],
  },
};

export function chainOf(face: FaceName, weight: Weight): readonly FontName[] {
  return chains[face][weight];
}

interface Measures {
  /** Height of a capital as a part of the em. */
  readonly cap: number;
  /** Advance by code point, as a part of the em. */
  readonly advances: ReadonlyMap<number, number>;
}

const measured = new Map<FontName, Measures>(
  fontNames.map((name) => {
    const { unitsPerEm, capHeight, stretches }: Widths = widths[name];
    const byCode = new Map<number, number>();
    for (const [first, advances] of stretches) {
      advances.split(' ').forEach((advance, k) => {
        byCode.set(first + k, Number(advance) / unitsPerEm);
      });
    }
    return [name, { cap: capHeight / unitsPerEm, advances: byCode }];
  }),
);

function measuresOf(font: FontName): Measures {
  const found = measured.get(font);
  if (!found) {
    throw new Refusal({
      code: 'unknown-name',
      at: 'font',
      got: font,
      want: fontNames.join(', '),
      mend: 'Make the table of widths again.',
    });
  }
  return found;
}

/** The em at which capitals of this font are `capMm` high, mm. */
export function emMm(font: FontName, capMm: number): number {
  return capMm / measuresOf(font).cap;
}

/** Whether the font file holds the sign. */
export function holds(font: FontName, sign: string): boolean {
  return measuresOf(font).advances.has(sign.codePointAt(0) as number);
}

/** Width of a string in one font without kerning, mm. Signs the font lacks are refused. */
export function advanceMm(font: FontName, text: string, capMm: number): number {
  const { advances } = measuresOf(font);
  let ems = 0;
  for (const sign of text) {
    const advance = advances.get(sign.codePointAt(0) as number);
    if (advance === undefined) throw lacking(sign, text);
    ems += advance;
  }
  return ems * emMm(font, capMm);
}

/** The refusal of a sign that no font of the chain can letter. */
export function lacking(sign: string, text: string): Refusal {
  const code = (sign.codePointAt(0) as number).toString(16).toUpperCase().padStart(4, '0');
  return new Refusal({
    code: 'unknown-name',
    at: `text “${text}”`,
    got: `${sign} (U+${code})`,
    want: 'lettered with signs of the shipped typefaces',
    mend: 'Write it in Latin or Greek letters.',
  });
}
