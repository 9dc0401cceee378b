const NAMES = ['no', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten', 'eleven', 'twelve'];

/** Small counts in words, larger in figures: `three`, `26`. */
export function countWord(count: number): string {
  return NAMES[count] ?? String(count);
}

/** `three modules`, `one module`. */
export function counted(count: number, one: string, many = `${one}s`): string {
  return `${countWord(count)} ${count === 1 ? one : many}`;
}

const ORDINALS = ['first', 'second', 'third', 'fourth', 'fifth', 'sixth', 'seventh', 'eighth', 'ninth', 'tenth'];

/** `fifth`, `12th`. */
export function ordinal(n: number): string {
  return ORDINALS[n - 1] ?? `${n}th`;
}

/** First letter large. */
export function sentence(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}

/** `north, east and west`. */
export function listed(words: readonly string[]): string {
  if (words.length < 2) return words[0] ?? '';
  return `${words.slice(0, -1).join(', ')} and ${words.at(-1)}`;
}
