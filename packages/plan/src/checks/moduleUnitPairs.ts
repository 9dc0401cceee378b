import type { ModuleSheet, UnitSheet } from '@eaveline/job';
import { coldVoltage } from '@eaveline/physics';
import { sheetOf } from '../equipment.ts';
import { given, type Working, worked } from '../working.ts';
import type { CheckContext } from './context.ts';

/** A module sheet on a unit sheet, as they meet somewhere on the roof. */
export interface Pair {
  readonly id: string;
  readonly moduleSheetId: string;
  readonly unitSheetId: string;
  readonly module: ModuleSheet;
  readonly unit: UnitSheet;
}

/** Every kind of module on every kind of unit it is plugged into, once. */
export function moduleUnitPairs({ array, choices }: Pick<CheckContext, 'array' | 'choices'>): readonly Pair[] {
  const pairs = new Map<string, Pair>();
  for (const placed of array.modules) {
    const unit = choices.units[placed.unitId];
    if (unit === undefined) continue;
    const id = `${placed.sheetId}-${unit.sheet}`;
    if (pairs.has(id)) continue;
    pairs.set(id, {
      id,
      moduleSheetId: placed.sheetId,
      unitSheetId: unit.sheet,
      module: sheetOf(choices.equipment, placed.sheetId, 'module'),
      unit: sheetOf(choices.equipment, unit.sheet, 'unit'),
    });
  }
  return [...pairs.values()];
}

/** Open-circuit voltage at the record low, with its working. */
export function coldVocOf(pair: Pair, recordLowC: number): { readonly volts: number; readonly working: Working } {
  const { maxVoltageV } = coldVoltage({
    vocStcV: pair.module.vocV,
    lowestTemperatureC: recordLowC,
    inverterMaxDcV: pair.unit.maxDcV,
    betaPercentPerK: pair.module.vocPctPerK,
  });
  const sheet = `choices.equipment.${pair.moduleSheetId}`;
  return {
    volts: maxVoltageV,
    working: worked(
      `${pair.module.name} at the record low`,
      maxVoltageV,
      'V',
      'V = Voc · (1 + β · (T − 25))',
      'module sheet and record low; the cell taken at air temperature',
      [
        given('open circuit', pair.module.vocV, 'V', `${sheet}.vocV`, 'module sheet'),
        given('its change', pair.module.vocPctPerK, '%/K', `${sheet}.vocPctPerK`, 'module sheet'),
        given('record low', recordLowC, '°C', 'facts.site.recordLowC', 'survey'),
      ],
      { symbol: 'V_oc', decimals: 1 },
    ),
  };
}

/** Cell above air on a hot still roof: 0.03 K·m²/W at 1000 W/m². Ross coefficient close over a roof (from memory). */
export const HOT_CELL_ABOVE_AIR_K = 30;
