import type { Drop, PlacedModule, RoofPlane } from '@eaveline/plan';

/** Neighbouring drops whose units lie in one row of modules. */
export interface DropGroup {
  /** `north, row 2`. */
  readonly words: string;
  readonly first: number;
  readonly last: number;
}

/** Drops gathered by the row their units lie in, in the order of the trunk. */
export function dropGroups(
  drops: readonly Pick<Drop, 'number' | 'unitId'>[],
  modules: readonly Pick<PlacedModule, 'unitId' | 'planeId' | 'row'>[],
  planes: readonly Pick<RoofPlane, 'id' | 'name'>[],
): DropGroup[] {
  const groups: DropGroup[] = [];
  for (const { number, unitId } of [...drops].sort((a, b) => a.number - b.number)) {
    const module = modules.find((each) => unitId !== undefined && each.unitId === unitId);
    if (module === undefined) continue;
    const plane = planes.find(({ id }) => id === module.planeId);
    const words = `${plane?.name.toLowerCase() ?? module.planeId}, row ${module.row}`;
    const last = groups.at(-1);
    if (last?.words === words) groups[groups.length - 1] = { ...last, last: number };
    else groups.push({ words, first: number, last: number });
  }
  return groups;
}
