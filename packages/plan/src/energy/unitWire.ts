import type { SupplyFacts, UnitSheet } from '@eaveline/job';
import { sourceV } from '../supply.ts';
import type { Line, TrunksPlan } from '../trunks/types.ts';

/** How a unit stands on the wires. */
export interface UnitWire {
  /** Share of its rating lost between its terminals and the board when every unit of its trunk gives its rating. */
  readonly lossShare: number;
  /** Share of its power on each line. */
  readonly lines: readonly { readonly line: Line; readonly share: number }[];
}

/**
 * Loss and lines of each unit, by id.
 *
 * A unit's current pushes through the volts by which it stands above the board, so that at full export
 *
 *     loss ÷ rating = rise above the board ÷ volts at its terminals
 *
 * and summed over a trunk that is exactly its I²R. At part load the loss falls with the square, where all units of a
 * trunk are loaded alike.
 */
export function unitWires(
  trunks: TrunksPlan,
  sheetOfUnit: (unitId: string) => UnitSheet,
  supply: Pick<SupplyFacts, 'system' | 'nominalV'>,
): ReadonlyMap<string, UnitWire> {
  const wires = new Map<string, UnitWire>();
  for (const trunk of trunks.trunks) {
    for (const { unitId, aboveBoardV, line } of trunk.drops) {
      if (unitId === undefined) continue;
      const { connection } = sheetOfUnit(unitId);
      const lossShare = aboveBoardV / sourceV(supply.system, supply.nominalV, connection);
      const on = connection === 'line-neutral' ? [line ?? (trunk.lines[0] as Line)] : trunk.lines;
      wires.set(unitId, { lossShare, lines: on.map((one) => ({ line: one, share: 1 / on.length })) });
    }
  }
  return wires;
}
