import type { Choices, PartSheet } from '@eaveline/job';
import { sheetsOfKind } from '../equipment.ts';
import { type Working, worked } from '../working.ts';
import type { KitLine } from './types.ts';

export const PRACTICE = 'common practice, no source';

/** One counted line; nothing where there is nothing to count. */
export function kitLine(line: {
  readonly id: string;
  readonly sheetId?: string | undefined;
  readonly name: string;
  readonly group: KitLine['group'];
  readonly count: number;
  readonly unit?: KitLine['unit'];
  readonly formula: string;
  readonly source?: string;
  readonly inputs?: readonly Working[];
}): KitLine[] {
  const { id, sheetId, name, group, count, unit = 'pieces', formula, source = 'count', inputs = [] } = line;
  if (count === 0) return [];
  return [
    {
      id,
      ...(sheetId === undefined ? {} : { sheetId }),
      name,
      group,
      count,
      unit,
      working: worked(name, count, unit === 'pieces' ? '' : unit, formula, source, inputs, { decimals: 0 }),
    },
  ];
}

/** A counted thing inside a working. */
export function part(name: string, value: number, unit = '', source = 'count'): Working {
  return { name, value, unit, source, decimals: unit === 'm' ? 1 : 0 };
}

/** What a small part is called in the trade where the job has no sheet for it. */
const TRADE_NAME: Readonly<Record<PartSheet['use'], string>> = {
  'feed-joint': 'trunk feed joint',
  'drop-cap': 'drop cap',
  'end-cap': 'trunk end cap',
  'drop-release-tool': 'drop-release tool',
  splice: 'rail splice',
  'bonding-jumper': 'bonding jumper',
  'earth-lug': 'earth lug',
  'roof-box': 'roof junction box',
  isolator: 'a.c. isolator',
  'surge-device': 'surge device',
  meter: 'meter',
  gateway: 'gateway',
  'current-transformer': 'current transformer',
  'cable-clip': 'cable clip, UV-proof',
  'tie-wire': 'coated tie wire',
};

/**
 * The part a job takes for a use: the one chosen for it, else the first of that use among its sheets, else a generic
 * trade name without a sheet.
 */
export function partFor(
  use: PartSheet['use'],
  { equipment, parts }: Pick<Choices, 'equipment' | 'parts'>,
  chosenId: string | undefined = parts[use],
): { readonly sheetId?: string; readonly name: string } {
  const chosen = chosenId === undefined ? undefined : equipment[chosenId];
  if (chosen?.kind === 'part' && chosenId !== undefined) return { sheetId: chosenId, name: chosen.name };
  const first = sheetsOfKind(equipment, 'part').find(({ sheet }) => sheet.use === use);
  return first ? { sheetId: first.id, name: first.sheet.name } : { name: TRADE_NAME[use] };
}
