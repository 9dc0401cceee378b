import { letteringOf, text } from '../drawing/make.ts';
import type { Ink, Lettering } from '../drawing/model.ts';
import { wrap, wrapEven } from '../type/wrap.ts';
import { type Part, stacked, whole } from './block.ts';

export interface ParagraphLook extends Partial<Lettering> {
  readonly ink?: Ink;
  readonly heading?: boolean;
}

/** Distance of two baselines as a part of the cap height. */
const PITCH = 1.8;

/** Words wrapped to the column. A paragraph goes on in the next column where it has to. */
export function paragraph(words: string, look: ParagraphLook = {}): Part {
  const lettering = letteringOf(look);
  return (topLeft, widthMm, roomMm) => linesOf(wrap(words, widthMm, lettering), look)(topLeft, widthMm, roomMm);
}

/** Lines already broken, each of them whole. */
export function linesOf(lines: readonly string[], look: ParagraphLook = {}): Part {
  const { capMm } = letteringOf(look);
  const pitch = PITCH * capMm;
  const parts = lines.map((line) =>
    whole(pitch, ([x, top]) => (line === '' ? [] : [text(line, [x, top - (pitch + capMm) / 2], { ...look })])),
  );
  return (topLeft, widthMm, roomMm) => stacked(parts, topLeft, widthMm, roomMm);
}

/** The sentence that heads a sheet, in 5 mm letters, and its quiet line. */
export function headline(sentence: string, quiet?: string): Part {
  const look = { capMm: 5, weight: 700, face: 'plain', heading: true } as const;
  const head: Part = (at, widthMm, roomMm) => linesOf(wrapEven(sentence, widthMm, look), look)(at, widthMm, roomMm);
  const parts = quiet === undefined ? [head] : [head, paragraph(quiet, { capMm: 2.5, ink: 'quiet' })];
  return (topLeft, widthMm, roomMm) => stacked(parts, topLeft, widthMm, roomMm);
}

/** A heading inside a sheet, 3.5 mm. */
export function subhead(words: string): Part {
  return paragraph(words, { capMm: 3.5, weight: 700 });
}
