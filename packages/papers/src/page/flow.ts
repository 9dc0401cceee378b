import { Refusal } from '@eaveline/physics';
import type { Item, Point } from '../drawing/model.ts';
import { type Part, stacked } from './block.ts';

/** A column to fill: its top left corner and its size. */
export interface Column {
  readonly topLeft: Point;
  readonly widthMm: number;
  readonly heightMm: number;
}

/**
 * Parts laid into as many columns as they need, one set of items a column.
 *
 * @throws {Refusal} `no-solution` for a part that does not fit an empty column.
 */
export function flow(parts: readonly Part[], column: Column): Item[][] {
  const { topLeft, widthMm, heightMm } = column;
  const columns: Item[][] = [];
  let rest: Part | undefined = (at, wide, room) => stacked(parts, at, wide, room);
  while (rest !== undefined) {
    const block = rest(topLeft, widthMm, heightMm);
    if (block.rest !== undefined && block.items.length === 0) {
      throw new Refusal({
        code: 'no-solution',
        at: `column ${columns.length + 1}`,
        got: `${heightMm} mm of room`,
        want: 'room for the next part',
        mend: 'Break the part up, or use a larger sheet.',
      });
    }
    columns.push([...block.items]);
    rest = block.rest;
  }
  return columns;
}
