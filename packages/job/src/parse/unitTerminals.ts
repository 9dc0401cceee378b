import { fieldOf, groups } from './gather.ts';
import { type Remarked, shown, stop } from './remark.ts';

/** Lines a unit has to find on its trunk, by how its sheet says it sits on the supply. */
const NEEDS: Readonly<Record<string, number>> = { 'line-neutral': 1, 'line-line': 2, 'three-phase': 3 };

/** Units whose trunk does not carry the lines they stand between: two for line to line, all three for three-phase. */
export function unitTerminals(raw: unknown): Remarked[] {
  const choices = fieldOf(raw, 'choices');
  const named = (map: string, id: unknown) => (typeof id === 'string' ? fieldOf(fieldOf(choices, map), id) : undefined);
  return groups(raw, 'choices.units').flatMap(({ path, id, group }) => {
    const connection = fieldOf(named('equipment', group.sheet), 'connection');
    const lines = fieldOf(named('trunks', group.trunkId), 'lines');
    if (typeof connection !== 'string' || !Array.isArray(lines) || !Object.hasOwn(NEEDS, connection)) return [];
    const needed = NEEDS[connection] ?? 1;
    if (lines.length >= needed) return [];
    return [
      stop(
        `${path}.trunkId`,
        `trunk ${shown(group.trunkId)} on ${lines.join(', ') || 'no line'}`,
        `a trunk of ${needed} lines: the sheet ${shown(group.sheet)} of ${id} is ${connection}`,
        'Lay it on another trunk, give the trunk its lines, or take a unit that suits the supply.',
      ),
    ];
  });
}
