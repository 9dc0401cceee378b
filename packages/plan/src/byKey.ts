/** Things under their keys, each list in their order; a key of nothing has an empty list. */
export function byKey<T, K>(things: Iterable<T>, keyOf: (thing: T) => K): (key: K) => readonly T[] {
  const lists = new Map<K, T[]>();
  for (const thing of things) {
    const key = keyOf(thing);
    const list = lists.get(key);
    if (list === undefined) lists.set(key, [thing]);
    else list.push(thing);
  }
  return (key) => lists.get(key) ?? [];
}
