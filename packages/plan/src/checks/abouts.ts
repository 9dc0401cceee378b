import type { About } from '../finding.ts';

/** What findings are about, in one spelling. */
export const abouts = {
  job: (id = 'job', name = 'The job'): About => ({ kind: 'job', id, name }),
  site: (id = 'site'): About => ({ kind: 'site', id, name: 'The site' }),
  plane: (id: string, name: string): About => ({ kind: 'plane', id, name: `${name} plane` }),
  trunk: (id: string, name: string): About => ({ kind: 'trunk', id, name: trunkName(name) }),
  circuit: (id: string, name: string): About => ({ kind: 'circuit', id, name }),
  board: (name: string): About => ({ kind: 'board', id: 'board', name }),
  battery: (id: string, name: string): About => ({ kind: 'battery', id, name }),
  backup: (id = 'backup', name = 'Backup'): About => ({ kind: 'backup', id, name }),
  network: (id = 'network', name = 'The network'): About => ({ kind: 'network', id, name }),
};

/** `A` and `Trunk A` both read `Trunk A`. */
export function trunkName(name: string): string {
  return /^trunk /i.test(name) ? name : `Trunk ${name}`;
}

/** Word with a capital, for the start of a sentence. */
export function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

/** `1 unit`, `2 units`. */
export function plural(n: number, one: string, many = `${one}s`): string {
  return `${n} ${n === 1 ? one : many}`;
}

/** `an active`, `a line`: the word with its article. */
export function withArticle(word: string): string {
  return `${/^[aeiou]/i.test(word) ? 'an' : 'a'} ${word}`;
}
