/** Longest id made of a name: it becomes part of a file's name and of an address. */
const LONGEST = 60;

/**
 * An id made of a name: its letters without accents in small, digits, hyphens for all else.
 *
 * @param isTaken  ids that stand already; a number is added until one is free.
 */
export function idFrom(name: string, isTaken: (id: string) => boolean = () => false): string {
  const plain = name
    .normalize('NFD')
    .toLowerCase()
    .replace(/\p{M}/gu, '')
    .replace(/[^a-z0-9]+/g, '-')
    .slice(0, LONGEST)
    .replace(/^-+|-+$/g, '');
  const id = plain === '' ? 'job' : plain;
  let free = id;
  for (let n = 2; isTaken(free); n++) free = `${id}-${n}`;
  return free;
}
