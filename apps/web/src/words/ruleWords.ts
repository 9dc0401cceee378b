import { sentence } from './count.ts';

const SHORT: Readonly<Record<string, string>> = { dc: 'd.c.', ac: 'a.c.' };

/** A rule's own name in words: `trunk-rise` is `Trunk rise`, `dc-ac-ratio` is `D.c. a.c. ratio`. */
export function ruleWords(rule: string): string {
  return sentence(
    rule
      .split('-')
      .map((word) => SHORT[word] ?? word)
      .join(' '),
  );
}
