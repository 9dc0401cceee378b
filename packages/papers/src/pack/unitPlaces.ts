import type { Drop, Line, PlacedModule, Plan, TrunkPlan } from '@eaveline/plan';

/** The trunk and the drop a unit hangs on. */
export interface UnitPlace {
  readonly trunk: TrunkPlan;
  readonly drop: Drop;
}

/** Where a unit hangs; `undefined` for one on no trunk. */
export function placeOfUnit(plan: Plan, unitId: string): UnitPlace | undefined {
  for (const trunk of plan.trunks.trunks) {
    const drop = trunk.drops.find((one) => one.unitId === unitId);
    if (drop !== undefined) return { trunk, drop };
  }
  return undefined;
}

/** Lines a module feeds: its drop's own, or all lines of its trunk. */
export function lineOfModule(plan: Plan, module: PlacedModule): readonly Line[] {
  const place = placeOfUnit(plan, module.unitId);
  if (place === undefined) return [];
  return place.drop.line === undefined ? place.trunk.lines : [place.drop.line];
}
