import { type SheetOf, sheetOf } from '../equipment.ts';
import type { About } from '../finding.ts';
import type { CheckContext } from './context.ts';

/** One kind of module on one kind of unit, however many times the job has them. */
export interface InputPair {
  readonly moduleSheetId: string;
  readonly module: SheetOf<'module'>;
  readonly unitSheetId: string;
  readonly unit: SheetOf<'unit'>;
  readonly about: About;
  readonly count: number;
}

/** Every kind of module met with every kind of unit it feeds: each input takes one module. */
export function inputPairs({ array, choices }: Pick<CheckContext, 'array' | 'choices'>): readonly InputPair[] {
  const pairs = new Map<string, InputPair>();
  for (const placed of array.modules) {
    const unitSheetId = choices.units[placed.unitId]?.sheet;
    if (unitSheetId === undefined) throw new Error(`module '${placed.id}' names a unit that is not in the job`);
    const id = `${placed.sheetId}@${unitSheetId}`;
    const module = sheetOf(choices.equipment, placed.sheetId, 'module');
    const unit = sheetOf(choices.equipment, unitSheetId, 'unit');
    pairs.set(id, {
      moduleSheetId: placed.sheetId,
      module,
      unitSheetId,
      unit,
      about: { kind: 'unit', id, name: `${module.name} on ${unit.name}` },
      count: (pairs.get(id)?.count ?? 0) + 1,
    });
  }
  return [...pairs.values()];
}
