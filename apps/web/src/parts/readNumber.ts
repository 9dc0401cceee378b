/** What typed text says as a number: nothing at all, a number, or words that are none. */
export type ReadNumber =
  | { readonly kind: 'empty' }
  | { readonly kind: 'number'; readonly value: number }
  | { readonly kind: 'words'; readonly text: string };

/**
 * Reads a number as people type it: `31`, `31.5 m`, `31,5`, `16 800`, `−4`.
 *
 * A comma is a decimal comma unless groups of three digits follow it all along. The field's own unit may stand
 * behind the number; another unit is not guessed at.
 */
export function readNumber(typed: string, unit: string): ReadNumber {
  let text = typed.trim().replace(/[\u2212\u2013]/g, '-');
  if (text === '') return { kind: 'empty' };
  if (unit !== '' && text.toLowerCase().endsWith(unit.toLowerCase())) text = text.slice(0, -unit.length).trim();
  text = text.replace(/[\s\u00a0\u2009\u202f]/g, '');
  if (/^-?\d{1,3}(,\d{3})+(\.\d+)?$/.test(text) && !/^-?0,/.test(text)) text = text.replaceAll(',', '');
  else if (!text.includes('.')) text = text.replace(',', '.');
  if (!/^-?(\d+\.?\d*|\.\d+)$/.test(text)) return { kind: 'words', text: typed.trim() };
  return { kind: 'number', value: Number(text) };
}
