import type { Item, Point } from '../drawing/model.ts';

/** Something that stands in a column of a page. */
export interface Block {
  readonly items: readonly Item[];
  /** Height it takes from its top, mm. 0 when nothing of it found room. */
  readonly heightMm: number;
  /** What did not find room and goes on to the next column. */
  readonly rest?: Part;
}

/** Lays something out: by its top left corner, its width, and the height that is left. */
export type Part = (topLeft: Point, widthMm: number, roomMm: number) => Block;

/** A part whole or not at all. */
export function whole(heightMm: number, draw: (topLeft: Point, widthMm: number) => readonly Item[]): Part {
  const part: Part = (topLeft, widthMm, roomMm) =>
    heightMm > roomMm + 1e-9 ? { items: [], heightMm: 0, rest: part } : { items: draw(topLeft, widthMm), heightMm };
  return part;
}

/** Empty space; at the foot of a column it is dropped rather than carried over. */
export function gap(heightMm: number): Part {
  return (_topLeft, _widthMm, roomMm) => ({ items: [], heightMm: Math.min(heightMm, Math.max(0, roomMm)) });
}

/** A part drawn by its own hand in a box of the column's width. */
export function picture(heightMm: number, draw: (bottomLeft: Point, widthMm: number) => readonly Item[]): Part {
  return whole(heightMm, ([x, top], widthMm) => draw([x, top - heightMm], widthMm));
}

/** Parts that stay in one column: all of them, or none. */
export function together(...parts: readonly Part[]): Part {
  const part: Part = (topLeft, widthMm, roomMm) => {
    const stack = stacked(parts, topLeft, widthMm, roomMm);
    return stack.rest === undefined ? stack : { items: [], heightMm: 0, rest: part };
  };
  return part;
}

/** Parts one under the other, as far as they find room. */
export function stacked(parts: readonly Part[], [x, top]: Point, widthMm: number, roomMm: number): Block {
  const items: Item[] = [];
  let heightMm = 0;
  for (const [k, part] of parts.entries()) {
    const block = part([x, top - heightMm], widthMm, roomMm - heightMm);
    items.push(...block.items);
    heightMm += block.heightMm;
    if (block.rest !== undefined) {
      const later = [block.rest, ...parts.slice(k + 1)];
      return { items, heightMm, rest: (at, wide, room) => stacked(later, at, wide, room) };
    }
  }
  return { items, heightMm };
}
