/** Letters that are no letter with an accent, and signs of units: what they are typed as where a keyboard lacks them. */
const LETTERS: Readonly<Record<string, string>> = {
  ß: 'ss',
  ø: 'o',
  ł: 'l',
  æ: 'ae',
  œ: 'oe',
  đ: 'd',
  ð: 'd',
  þ: 'th',
  μ: 'u',
  ω: 'ohm',
  ı: 'i',
};

/** A text as it is looked for: in small, without accents, raised figures set down, one space between words: `10 mm2`. */
export function folded(text: string): string {
  return text
    .normalize('NFKD')
    .toLowerCase()
    .replace(/\p{M}/gu, '')
    .replace(/[ßøłæœđðþμωı]/g, (letter) => LETTERS[letter] ?? letter)
    .replace(/\s+/g, ' ')
    .trim();
}

/** Letters and figures alone: `1234-56` and `1234 56` are both `123456`. */
export function closedUp(text: string): string {
  return folded(text).replace(/[^\p{L}\p{N}]/gu, '');
}

/** True where one letter was changed, left out, added, or swapped with its neighbour. */
export function oneLetterOff(typed: string, word: string): boolean {
  if (Math.abs(typed.length - word.length) > 1 || typed === word) return false;
  let from = 0;
  while (from < typed.length && typed[from] === word[from]) from++;
  const rest = (text: string, skip: number) => text.slice(from + skip);
  if (typed.length < word.length) return rest(typed, 0) === rest(word, 1);
  if (typed.length > word.length) return rest(typed, 1) === rest(word, 0);
  if (rest(typed, 1) === rest(word, 1)) return true;
  const swapped = typed[from] === word[from + 1] && typed[from + 1] === word[from];
  return swapped && rest(typed, 2) === rest(word, 2);
}
