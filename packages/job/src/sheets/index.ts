import type { Sheet } from '../schema/sheets.ts';
import { breakerSheets } from './breakers.ts';
import { cableSheets } from './cables.ts';
import { moduleSheets } from './modules.ts';
import { clampSheets, fixingSheets, railSheets } from './mounting.ts';
import { partSheets } from './parts.ts';
import { batterySheets, changeoverSheets } from './storage.ts';
import { trunkCableSheets } from './trunkCables.ts';
import { unitSheets } from './units.ts';

const shelf = {
  ...moduleSheets,
  ...unitSheets,
  ...trunkCableSheets,
  ...batterySheets,
  ...changeoverSheets,
  ...railSheets,
  ...clampSheets,
  ...fixingSheets,
  ...cableSheets,
  ...breakerSheets,
  ...partSheets,
};

/** Name of an invented equipment sheet on the shelf. */
export type SheetId = keyof typeof shelf;

/** Every invented equipment sheet, by id. A job takes copies of those it uses. */
export const demoSheets: Readonly<Record<SheetId, Sheet>> = shelf;

/** Small parts that every job's kit may count. */
export const partIds = Object.keys(partSheets) as readonly (keyof typeof partSheets)[];

/** Copies of the named sheets, to embed in a job by value; the kit's small parts come along. */
export function takeSheets(...ids: readonly SheetId[]): Record<string, Sheet> {
  const taken: Record<string, Sheet> = {};
  for (const id of [...ids, ...partIds]) taken[id] = { ...demoSheets[id] };
  return taken;
}
