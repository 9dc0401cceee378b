import type { Finding } from '@eaveline/plan';

/** A mend as the history and a step back name it: what it is done to, then what is done. `Trunk A: feed it at the fifth drop.` */
export function mendWords({ about }: Pick<Finding, 'about'>, words: string): string {
  return words.includes(about.name) ? words : `${about.name}: ${words.charAt(0).toLowerCase()}${words.slice(1)}`;
}
