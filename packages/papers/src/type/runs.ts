import type { Lettering } from '../drawing/model.ts';
import { type DrawnSign, drawnSigns } from './drawnSigns.ts';
import { advanceMm, chainOf, emMm, type FontName, holds, lacking } from './faces.ts';

/** A stretch of a text lettered in one font. */
export interface FontRun {
  readonly font: FontName;
  readonly text: string;
  /** From the start of the text, mm. */
  readonly xMm: number;
  readonly widthMm: number;
  /** The em of this font at the cap height asked for: capitals of all fonts stand equally high. */
  readonly emMm: number;
}

/** A sign drawn with a pen. */
export interface SignRun {
  readonly font: 'drawn';
  readonly text: string;
  readonly sign: DrawnSign;
  readonly xMm: number;
  readonly widthMm: number;
}

export type Run = FontRun | SignRun;

/**
 * A text as runs of one font each, with their places.
 *
 * A sign the face lacks comes from the next font of its chain. Where that sign is a letter, its
 * whole word does (MΩ, Jiří): a word of two faces looks like a misprint. Symbols of quantities go
 * sign by sign, since Latin and Greek italics are two files of one face.
 *
 * @throws {Refusal} `unknown-name` for a sign that no font holds.
 */
export function runsOf(text: string, { face, weight, capMm }: Lettering): Run[] {
  const chain = chainOf(face, weight);
  const runs: Run[] = [];
  let xMm = 0;
  for (const { font, text: piece } of joined(pieces(text, chain, face !== 'symbol'))) {
    const sign = font === 'drawn' ? drawnSigns[piece] : undefined;
    const widthMm = font === 'drawn' ? (sign?.advance ?? 0) * capMm : advanceMm(font, piece, capMm);
    if (font !== 'drawn') runs.push({ font, text: piece, xMm, widthMm, emMm: emMm(font, capMm) });
    else if (sign) runs.push({ font, text: piece, sign, xMm, widthMm });
    xMm += widthMm;
  }
  return runs;
}

interface Piece {
  readonly font: FontName | 'drawn';
  readonly text: string;
}

function pieces(text: string, chain: readonly FontName[], wholeWords: boolean): Piece[] {
  return text.split(/(\p{L}+)/u).flatMap((part): Piece[] => {
    const word = wholeWords && /^\p{L}/u.test(part);
    const whole = word ? chain.find((font) => [...part].every((sign) => holds(font, sign))) : undefined;
    if (whole !== undefined) return [{ font: whole, text: part }];
    return [...part].map((sign) => ({ font: fontFor(sign, chain, text), text: sign }));
  });
}

function fontFor(sign: string, chain: readonly FontName[], text: string): FontName | 'drawn' {
  if (Object.hasOwn(drawnSigns, sign)) return 'drawn';
  const font = chain.find((name) => holds(name, sign));
  if (font === undefined) throw lacking(sign, text);
  return font;
}

/** Neighbours of one font become one run; drawn signs stay single. */
function joined(parts: readonly Piece[]): Piece[] {
  const runs: Piece[] = [];
  for (const part of parts) {
    const last = runs.at(-1);
    if (last && last.font === part.font && part.font !== 'drawn') {
      runs[runs.length - 1] = { font: part.font, text: last.text + part.text };
    } else runs.push(part);
  }
  return runs;
}
