/** Letters to add, leave out or change to turn one word into the other. */
function distance(a: string, b: string): number {
  let row = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const next = [i];
    for (let j = 1; j <= b.length; j++) {
      const change = (row[j - 1] as number) + (a[i - 1] === b[j - 1] ? 0 : 1);
      next.push(Math.min(change, (row[j] as number) + 1, (next[j - 1] as number) + 1));
    }
    row = next;
  }
  return row[b.length] as number;
}

/** The name that was probably meant, or undefined where none comes near: a third of its letters may differ, or it begins so. */
export function nearestName(typed: string, names: readonly string[]): string | undefined {
  const wanted = typed.toLowerCase();
  const ranked = names.map((name) => ({ name, off: distance(wanted, name) })).sort((a, b) => a.off - b.off);
  const [best] = ranked;
  if (best && best.off <= Math.max(2, best.name.length / 3)) return best.name;
  return wanted.length >= 3 ? names.find((name) => name.includes(wanted)) : undefined;
}
