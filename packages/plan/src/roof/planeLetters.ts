/**
 * A short mark for each plane, unique in the job: its first letter; where two share it, the initials of its words;
 * then its first two letters; at last its letter and its place in the list.
 */
export function planeLetters(names: readonly string[]): string[] {
  const ways: readonly ((words: readonly string[], k: number) => string)[] = [
    (words) => first(words[0]),
    (words) => words.map(first).join(''),
    (words) => first(words[0]) + (words[0]?.[1] ?? '').toLowerCase(),
    (words, k) => `${first(words[0])}${k + 1}`,
  ];
  const letters: (string | undefined)[] = names.map(() => undefined);
  for (const way of ways) {
    const tries = names.map((name, k) => letters[k] ?? way(wordsOf(name), k));
    tries.forEach((mark, k) => {
      if (mark !== '' && tries.filter((other) => other === mark).length === 1) letters[k] = mark;
    });
  }
  // two names made of the same marks can still meet: a number nobody else has settles it
  return letters.map((mark, k) => mark ?? `P${k + 1}`);
}

function wordsOf(name: string): string[] {
  return name.match(/\p{Letter}+/gu) ?? [];
}

function first(word: string | undefined): string {
  return (word?.[0] ?? '').toUpperCase();
}
