import type { Choices, UnitSheet } from '@eaveline/job';
import type { PlacedModule } from '../array/types.ts';
import { sheetOf } from '../equipment.ts';
import type { RoofPlane } from '../roof/types.ts';
import type { SunPlan } from '../sun/types.ts';
import { writeLedger } from './ledger.ts';
import type { ModuleYear } from './moduleYear.ts';
import type { ModuleYears, NumberedYear } from './moduleYears.ts';
import type { ModuleEnergy } from './types.ts';
import type { UnitWire } from './unitWire.ts';
import { type UnitYear, unitYear } from './unitYear.ts';

/** What all units share. */
export interface UnitContext {
  readonly sun: SunPlan;
  readonly planes: ReadonlyMap<string, RoofPlane>;
  readonly wires: ReadonlyMap<string, UnitWire>;
  readonly sheetOfUnit: (unitId: string) => UnitSheet;
  readonly units: Choices['units'];
  readonly equipment: Choices['equipment'];
  readonly range: readonly [number, number];
}

/** One unit with its year and its modules' figures. */
export interface WorkedUnit {
  readonly unitId: string;
  readonly acW: Float64Array;
  readonly ratedVA: number;
  readonly modules: readonly ModuleEnergy[];
}

/**
 * All units of the array. Units whose modules share their years share theirs too: most of a clear roof is worked out
 * once.
 */
export function workUnits(modules: readonly PlacedModule[], years: ModuleYears, context: UnitContext): WorkedUnit[] {
  return [...byUnit(modules)].map(([unitId, own]): WorkedUnit => {
    const sheet = context.sheetOfUnit(unitId);
    const ownYears = own.map((module) => years.byModule.get(module.id) as NumberedYear);
    const key = [sheet.ratedVA, sheet.efficiency, ...ownYears.map((year) => year.number)].join(' ');
    const dcW = ownYears.map((year) => year.dcW);
    const year = years.units.get(key) ?? unitYear(sheet, dcW, context.sun);
    years.units.set(key, year);
    return {
      unitId,
      acW: year.acW,
      ratedVA: sheet.ratedVA,
      modules: own.map((module, k) => moduleEnergy(module, ownYears[k] as ModuleYear, year, k, sheet, context)),
    };
  });
}

function byUnit(modules: readonly PlacedModule[]): Map<string, PlacedModule[]> {
  const units = new Map<string, PlacedModule[]>();
  for (const module of modules) {
    const own = units.get(module.unitId);
    if (own) own.push(module);
    else units.set(module.unitId, [module]);
  }
  for (const own of units.values()) own.sort((a, b) => a.input - b.input);
  return units;
}

function moduleEnergy(
  module: PlacedModule,
  year: ModuleYear,
  unit: UnitYear,
  input: number,
  sheet: UnitSheet,
  { sun, planes, wires, units, equipment, range }: UnitContext,
): ModuleEnergy {
  const share = unit.shares[input] as UnitYear['shares'][number];
  const lossShare = wires.get(module.unitId)?.lossShare ?? 0;
  const monthlyKwh = Array.from(share.monthlyKwh, (kwh, m) => kwh - lossShare * (share.monthlySquareKwh[m] as number));
  const boardKwh = total(monthlyKwh);
  return {
    moduleId: module.id,
    monthlyKwh,
    annualKwh: boardKwh,
    clippedKwh: share.clippedKwh,
    shadeLoss: year.openKwhM2 > 0 ? 1 - year.bareKwhM2 / year.openKwhM2 : 0,
    ...writeLedger({
      module,
      moduleSheet: sheetOf(equipment, module.sheetId, 'module'),
      plane: planes.get(module.planeId) as RoofPlane,
      sun,
      year,
      unitSheet: sheet,
      unitSheetId: units[module.unitId]?.sheet ?? '',
      acKwh: total(share.monthlyKwh),
      clippedKwh: share.clippedKwh,
      boardKwh,
      lossShare,
      range,
    }),
  };
}

function total(values: ArrayLike<number>): number {
  let sum = 0;
  for (let k = 0; k < values.length; k++) sum += values[k] as number;
  return sum;
}
