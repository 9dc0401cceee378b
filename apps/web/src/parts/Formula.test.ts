import { expect, test } from 'vitest';
import { piecesOf } from './Formula.tsx';

const slanting = (words: string, symbols: readonly string[] = []) =>
  piecesOf(words, symbols)
    .filter(({ isSymbol }) => isSymbol)
    .map(({ text }) => text);

test('in an equation every quantity slants, figures and signs stand upright', () => {
  expect(slanting('ΔU = 2 · r · I · L')).toEqual(['ΔU', 'r', 'I', 'L']);
  expect(slanting('Z_s = Z_e + 1.28 · (R₁ + R₂ + what lies beyond)')).toEqual(['Z_s', 'Z_e', 'R₁', 'R₂']);
});

test('what follows a comma is a sentence again: its a is a word', () => {
  expect(slanting('ΔU = 2 · r · I · L, each a span with the units beyond it')).toEqual(['ΔU', 'r', 'I', 'L']);
});

test('in a sentence only the symbols its figures bear slant', () => {
  expect(slanting('one a trunk')).toEqual([]);
  expect(slanting('58 A × 0.82')).toEqual([]);
  expect(slanting('r · I · L, there and back', ['r'])).toEqual(['r']);
});

test('nothing is lost', () => {
  const words = 'P = P_mp · G/1000 · (1 + γ · (T − 25)) · η, not above its rating';
  expect(
    piecesOf(words, [])
      .map(({ text }) => text)
      .join(''),
  ).toBe(words);
  expect(slanting(words)).toEqual(['P', 'P_mp', 'G', 'γ', 'T', 'η']);
});
