import { sheetOf } from '../equipment.ts';
import { given, type Working } from '../working.ts';
import type { KitInput } from './kitInput.ts';
import { kitLine, part } from './kitLine.ts';
import type { KitLine } from './types.ts';

/** Modules and units with their spares. A spare is of the sheet there is most of. */
export function arrayLines({ view, array }: KitInput): KitLine[] {
  const { equipment, spares } = view;
  const modules = countBy(array.modules.map(({ sheetId }) => sheetId));
  const units = countBy(Object.values(view.units).map(({ sheet }) => sheet));
  return [
    ...withSpares('module', modules, spares.modules, (id) => sheetOf(equipment, id, 'module').name),
    ...withSpares('unit', units, spares.units, (id) => sheetOf(equipment, id, 'unit').name),
  ];
}

function withSpares(
  kind: 'module' | 'unit',
  counts: ReadonlyMap<string, number>,
  spare: number | undefined,
  nameOf: (sheetId: string) => string,
): KitLine[] {
  const [most] = [...counts].sort((a, b) => b[1] - a[1])[0] ?? [];
  return [...counts].flatMap(([sheetId, placed]) => {
    const spares = sheetId === most ? (spare ?? 0) : 0;
    const inputs: Working[] = [part('placed', placed)];
    if (spares > 0) inputs.push(given('spare', spares, '', `choices.spares.${kind}s`));
    return kitLine({
      id: `${kind}:${sheetId}`,
      sheetId,
      name: nameOf(sheetId),
      group: 'array',
      count: placed + spares,
      formula: 'placed + spare',
      inputs,
    });
  });
}

/** How often each thing comes, in the order of first coming. */
export function countBy(things: readonly string[]): Map<string, number> {
  const counts = new Map<string, number>();
  for (const thing of things) counts.set(thing, (counts.get(thing) ?? 0) + 1);
  return counts;
}
