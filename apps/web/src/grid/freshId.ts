/** An id nobody has, that a person can read: `plane-2`. */
export function freshId(stem: string, taken: Readonly<Record<string, unknown>>): string {
  let n = Object.keys(taken).length + 1;
  while (Object.hasOwn(taken, `${stem}-${n}`)) n++;
  return `${stem}-${n}`;
}
