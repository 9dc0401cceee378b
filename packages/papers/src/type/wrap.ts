import type { FaceName, Lettering } from '../drawing/model.ts';
import { metrics } from './metrics.ts';

/**
 * A text in lines no wider than `widthMm`, broken at spaces; `\n` starts a new line. No-break
 * and thin spaces hold. A word wider than the line is broken between signs.
 */
export function wrap(text: string, widthMm: number, lettering: Lettering): string[] {
  return text.split('\n').flatMap((line) => wrapLine(line, widthMm, lettering));
}

function wrapLine(text: string, widthMm: number, lettering: Lettering): string[] {
  const fits = (line: string): boolean => metrics.widthMm(line, lettering) <= widthMm + 1e-9;
  const lines: string[] = [];
  let line = '';
  for (const word of text.split(' ')) {
    const longer = line === '' ? word : `${line} ${word}`;
    if (fits(longer)) {
      line = longer;
      continue;
    }
    if (line !== '') lines.push(line);
    const broken = fits(word) ? [word] : breakWord(word, fits);
    lines.push(...broken.slice(0, -1));
    line = broken.at(-1) ?? '';
  }
  return [...lines, line];
}

function breakWord(word: string, fits: (line: string) => boolean): string[] {
  const parts: string[] = [];
  let part = '';
  for (const sign of word) {
    if (part !== '' && !fits(part + sign)) {
      parts.push(part);
      part = sign;
    } else part += sign;
  }
  return [...parts, part];
}

/** The same number of lines as `wrap`, as even as they can be: no single word is left on the last. */
export function wrapEven(text: string, widthMm: number, lettering: Lettering): string[] {
  const lines = wrap(text, widthMm, lettering);
  let [narrow, wide] = [0, widthMm];
  while (wide - narrow > 0.5) {
    const middle = (narrow + wide) / 2;
    const broken = words(text).some((word) => metrics.widthMm(word, lettering) > middle);
    if (broken || wrap(text, middle, lettering).length > lines.length) narrow = middle;
    else wide = middle;
  }
  return wrap(text, wide, lettering);
}

function words(text: string): string[] {
  return text.split(/[ \n]/);
}

/** How a text was made to fit its cell. */
export interface Fitted extends Lettering {
  readonly lines: readonly string[];
}

/**
 * Lettering that fits a cell: the largest of `caps` on one line, then the smallest in the close
 * face, then the close face on up to `maxLines` lines. What is still left over is cut with `…`.
 */
export function fit(
  text: string,
  widthMm: number,
  caps: readonly number[],
  look: { readonly weight: Lettering['weight']; readonly face?: FaceName; readonly maxLines?: number },
): Fitted {
  const { weight, face = 'plain', maxLines = 1 } = look;
  const smallest = Math.min(...caps);
  const tries: Lettering[] = [
    ...[...caps].sort((a, b) => b - a).map((capMm) => ({ capMm, weight, face })),
    { capMm: smallest, weight, face: 'close' },
  ];
  for (const lettering of tries) {
    if (metrics.widthMm(text, lettering) <= widthMm) return { ...lettering, lines: [text] };
  }
  const close: Lettering = { capMm: smallest, weight, face: 'close' };
  const lines = wrap(text, widthMm, close);
  if (lines.length <= maxLines) return { ...close, lines };
  const kept = lines.slice(0, maxLines);
  kept[maxLines - 1] = cut(kept[maxLines - 1] as string, widthMm, close);
  return { ...close, lines: kept };
}

function cut(line: string, widthMm: number, lettering: Lettering): string {
  const signs = [...line];
  while (signs.length > 0 && metrics.widthMm(`${signs.join('')}…`, lettering) > widthMm) signs.pop();
  return `${signs.join('')}…`;
}
