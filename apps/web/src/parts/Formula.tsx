import { Fragment } from 'react';
import { SymbolOf } from './SymbolOf.tsx';

export interface FormulaProps {
  /** `ΔU = 2 · r · I · L`, or a sentence. */
  readonly words: string;
  /** Symbols its figures bear: they are set as symbols even in a sentence. */
  readonly symbols?: readonly string[];
}

/** One letter, a Δ before it, an index below it. */
const LETTER = /(?<![\p{L}\p{N}_])(Δ?\p{L}(?:_\p{L}+|[₀-₉]+)?)(?![\p{L}\p{N}_.])/u;
const EQUATION = /^Δ?\p{L}(?:_\p{L}+|[₀-₉]+)? = /u;

/** A formula as a book sets it: symbols of quantities slant, words, figures and units stand upright. */
export function Formula({ words, symbols = [] }: FormulaProps) {
  return (
    <>
      {piecesOf(words, symbols).map(({ at, text, isSymbol }) =>
        isSymbol ? <SymbolOf key={at} symbol={text} /> : <Fragment key={at}>{text}</Fragment>,
      )}
    </>
  );
}

interface Piece {
  readonly at: number;
  readonly text: string;
  readonly isSymbol: boolean;
}

/** A formula cut into symbols and what stands between them. What follows a comma or a full stop is a sentence. */
export function piecesOf(words: string, symbols: readonly string[]): Piece[] {
  const end = EQUATION.test(words) ? words.search(/[,.](?=\s)|$/) : 0;
  const pieces: Piece[] = [];
  let at = 0;
  for (const text of words.split(LETTER)) {
    const isSymbol = LETTER.test(text) && text.match(LETTER)?.[0] === text && (at < end || symbols.includes(text));
    if (text !== '') pieces.push({ at, text, isSymbol });
    at += text.length;
  }
  return pieces;
}
