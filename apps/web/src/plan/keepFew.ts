/** Plans that are remembered; one is about 3 MB, mostly its year of hours, and few jobs are open in one sitting. */
const FEW = 6;

/** Puts a value into a memory of the last few used and forgets the one that lay longest. */
export function keepFew<V>(memory: Map<string, V>, key: string, value: V): void {
  memory.delete(key);
  memory.set(key, value);
  for (const oldest of memory.keys()) {
    if (memory.size <= FEW) return;
    memory.delete(oldest);
  }
}
