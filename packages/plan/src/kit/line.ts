import type { Choices, PartSheet } from '@eaveline/job';
import { type Working, worked } from '../working.ts';
import type { KitLine } from './types.ts';

export type Equipment = Choices['equipment'];

/** A line of the kit whose count comes out of a formula. */
export function counted(
  id: string,
  group: KitLine['group'],
  name: string,
  count: number,
  unit: KitLine['unit'],
  formula: string,
  inputs: readonly Working[],
  sheetId?: string,
  source = 'counted from the drawing',
): KitLine {
  return {
    id,
    group,
    name,
    count,
    unit,
    ...(sheetId === undefined ? {} : { sheetId }),
    working: worked(name, count, unit, formula, source, inputs),
  };
}

/** A figure that went into a count. */
export function tallied(name: string, value: number | string, unit = '', source = 'the drawing', at?: string): Working {
  return { name, value, unit, source, ...(at === undefined ? {} : { at }) };
}

/** The part sheet of a use, where the job has one; the trade's own name where it has not. */
export function partOf(equipment: Equipment, use: PartSheet['use']): { readonly id?: string; readonly name: string } {
  for (const id of Object.keys(equipment).sort()) {
    const sheet = equipment[id];
    if (sheet?.kind === 'part' && sheet.use === use) return { id, name: sheet.name };
  }
  return { name: use.replaceAll('-', ' ') };
}

/** A counted part. */
export function part(
  equipment: Equipment,
  use: PartSheet['use'],
  group: KitLine['group'],
  count: number,
  formula: string,
  inputs: readonly Working[],
  source?: string,
): KitLine[] {
  if (count === 0) return [];
  const { id, name } = partOf(equipment, use);
  return [counted(use, group, name, count, 'pieces', formula, inputs, id, source)];
}

/** How many of each id. */
export function tallyOf(ids: readonly string[]): readonly (readonly [id: string, count: number])[] {
  const counts = new Map<string, number>();
  for (const id of ids) counts.set(id, (counts.get(id) ?? 0) + 1);
  return [...counts].sort(([a], [b]) => (a < b ? -1 : 1));
}
