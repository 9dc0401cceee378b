/** The firm most jobs carry; of two alike the one that comes first. Undefined where there is no job. */
export function firmOf(names: readonly string[]): string | undefined {
  const counts = new Map<string, number>();
  for (const name of names) counts.set(name, (counts.get(name) ?? 0) + 1);
  return [...counts].reduce<readonly [string, number] | undefined>(
    (most, each) => (most === undefined || each[1] > most[1] ? each : most),
    undefined,
  )?.[0];
}
