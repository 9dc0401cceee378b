import type { Line, Plan } from '@eaveline/plan';

/** On which line or lines each module's unit feeds, by module id. */
export function linesOfModules({
  array,
  trunks,
}: Pick<Plan, 'array' | 'trunks'>): ReadonlyMap<string, readonly Line[]> {
  const ofUnit = new Map<string, readonly Line[]>();
  for (const { drops, lines } of trunks.trunks) {
    for (const { unitId, line } of drops) {
      if (unitId !== undefined) ofUnit.set(unitId, line === undefined ? lines : [line]);
    }
  }
  return new Map(array.modules.map(({ id, unitId }) => [id, ofUnit.get(unitId) ?? []]));
}

/** The token of a conductor's colour. */
export function wireToken(line: Line): string {
  return `var(--${line.toLowerCase()})`;
}
