/** A cell by its row and column, counted from nought. */
export interface Spot {
  readonly row: number;
  readonly column: number;
}

/** A rectangle of cells, ends counted in. */
export interface Block {
  readonly top: number;
  readonly left: number;
  readonly bottom: number;
  readonly right: number;
}

export interface Size {
  readonly rows: number;
  readonly columns: number;
}

/** Rows that PageUp and PageDown pass over. */
const PAGE = 10;

/**
 * Where a key leads from a cell, as the grid pattern of the WAI-ARIA Authoring Practices has it; undefined where the
 * key leads nowhere. At an edge it stays.
 */
export function ledBy(key: string, ctrl: boolean, { row, column }: Spot, size: Size): Spot | undefined {
  const last = { row: size.rows - 1, column: size.columns - 1 };
  const to = (r: number, c: number): Spot => ({
    row: Math.min(Math.max(r, 0), last.row),
    column: Math.min(Math.max(c, 0), last.column),
  });
  switch (key) {
    case 'ArrowUp':
      return to(ctrl ? 0 : row - 1, column);
    case 'ArrowDown':
      return to(ctrl ? last.row : row + 1, column);
    case 'ArrowLeft':
      return to(row, ctrl ? 0 : column - 1);
    case 'ArrowRight':
      return to(row, ctrl ? last.column : column + 1);
    case 'Home':
      return to(ctrl ? 0 : row, 0);
    case 'End':
      return to(ctrl ? last.row : row, last.column);
    case 'PageUp':
      return to(row - PAGE, column);
    case 'PageDown':
      return to(row + PAGE, column);
    default:
      return undefined;
  }
}

/** The next cell in reading order after Tab, the one before after Shift and Tab; at the ends it stays. */
export function tabbed({ row, column }: Spot, back: boolean, { rows, columns }: Size): Spot {
  const at = Math.min(Math.max(row * columns + column + (back ? -1 : 1), 0), rows * columns - 1);
  return { row: Math.floor(at / columns), column: at % columns };
}

/** The rectangle between two cells. */
export function blockOf(a: Spot, b: Spot): Block {
  return {
    top: Math.min(a.row, b.row),
    bottom: Math.max(a.row, b.row),
    left: Math.min(a.column, b.column),
    right: Math.max(a.column, b.column),
  };
}

export function holds({ top, bottom, left, right }: Block, { row, column }: Spot): boolean {
  return row >= top && row <= bottom && column >= left && column <= right;
}

/** How many cells a rectangle has. */
export function cellCount({ top, bottom, left, right }: Block): number {
  return (bottom - top + 1) * (right - left + 1);
}

/** A cell that is there, where rows or columns have gone. */
export function kept({ row, column }: Spot, { rows, columns }: Size): Spot {
  return { row: Math.max(Math.min(row, rows - 1), 0), column: Math.max(Math.min(column, columns - 1), 0) };
}
