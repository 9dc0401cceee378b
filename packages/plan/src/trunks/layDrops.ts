import type { Choices, LineName, TrunkChoice } from '@eaveline/job';
import type { PhasorSource, Terminal } from '@eaveline/physics';
import { byKey } from '../byKey.ts';
import { type SheetOf, sheetOf } from '../equipment.ts';

const TERMINAL: Record<LineName, Terminal> = { L1: 0, L2: 1, L3: 2 };

/** A place on the trunk where a unit is joined, or could be. */
export interface LaidDrop {
  readonly number: number;
  /** From drop 1 along the cable, m. */
  readonly atM: number;
  readonly unitId?: string;
  readonly sheetId?: string;
  readonly sheet?: SheetOf<'unit'>;
  /** Terminals the unit stands between: one pair, or three for a three-phase unit. */
  readonly between: readonly (readonly [Terminal, Terminal])[];
  readonly line?: LineName;
}

/** The units of a trunk with their names, by its id. */
export type UnitsOfTrunk = (trunkId: string) => readonly (readonly [string, Choices['units'][string]])[];

export function unitsByTrunk(units: Choices['units']): UnitsOfTrunk {
  return byKey(Object.entries(units), ([, { trunkId }]) => trunkId);
}

/**
 * Drops of a trunk with their units and where they lie along the cable.
 *
 * A jumper adds its length to the pitch of the span it stands in. The highest drop number in use, and the spare drops
 * between, decide how many drops are laid.
 */
export function layDrops(
  trunkId: string,
  trunk: TrunkChoice,
  unitsOf: UnitsOfTrunk,
  equipment: Choices['equipment'],
): readonly LaidDrop[] {
  const cable = sheetOf(equipment, trunk.cableSheet, 'trunk-cable');
  const byDrop = new Map(unitsOf(trunkId).map(([id, unit]) => [unit.drop, { id, unit }] as const));
  const jumperM = new Map<number, number>();
  for (const jumper of Object.values(trunk.jumpers)) {
    jumperM.set(jumper.afterDrop, (jumperM.get(jumper.afterDrop) ?? 0) + jumper.lengthM);
  }

  const last = Math.max(1, trunk.feedDrop, ...byDrop.keys());
  let atM = 0;
  return Array.from({ length: last }, (_, k): LaidDrop => {
    const number = k + 1;
    if (k > 0) atM += cable.dropPitchMm / 1000 + (jumperM.get(k) ?? 0);
    const found = byDrop.get(number);
    if (found === undefined) return { number, atM, between: [] };
    const sheet = sheetOf(equipment, found.unit.sheet, 'unit');
    const line = found.unit.line ?? (sheet.connection === 'line-neutral' ? trunk.lines[0] : undefined);
    return {
      number,
      atM,
      unitId: found.id,
      sheetId: found.unit.sheet,
      sheet,
      between: terminalsOf(sheet, trunk.lines, line),
      ...(line === undefined ? {} : { line }),
    };
  });
}

function terminalsOf(
  sheet: SheetOf<'unit'>,
  lines: readonly LineName[],
  line: LineName | undefined,
): readonly (readonly [Terminal, Terminal])[] {
  if (sheet.connection === 'three-phase') return lines.map((name) => [TERMINAL[name], 'N'] as const);
  if (sheet.connection === 'line-line') return [[TERMINAL[lines[0] ?? 'L1'], TERMINAL[lines[1] ?? 'L2']]];
  return [[TERMINAL[line ?? lines[0] ?? 'L1'], 'N']];
}

/** What a drop's unit pushes out at its rating, shared among its terminals. */
export function sourcesOf(drop: LaidDrop): readonly PhasorSource[] {
  const { sheet, between } = drop;
  if (sheet === undefined) return [];
  return between.map(([from, to]) => ({ from, to, powerW: sheet.ratedVA / between.length }));
}

/** The terminals of a line, for those who count by lines. */
export function terminalOf(line: LineName): Terminal {
  return TERMINAL[line];
}
