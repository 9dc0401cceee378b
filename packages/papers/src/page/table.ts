import { Refusal } from '@eaveline/physics';
import { group, letteringOf, line, text } from '../drawing/make.ts';
import { markerBand } from '../drawing/marks.ts';
import type { Item, Point } from '../drawing/model.ts';
import { wrap } from '../type/wrap.ts';
import type { Part } from './block.ts';
import { CELL_CAP, type Cell, type Column, cellGroup, cellHeightMm, fractionMm, type Place } from './cells.ts';

export interface Row {
  readonly cells: readonly Cell[];
  /** The line under it: light between rows, heavy where a group of rows ends. */
  readonly rule?: 'light' | 'heavy';
  /** The row meant: marker under it. */
  readonly marked?: boolean;
  readonly of?: string;
  readonly label?: string;
}

export interface Table {
  readonly columns: readonly Column[];
  readonly rows: readonly Row[];
  /** What the table is, for whoever cannot see it. */
  readonly label?: string;
}

/** Clear space left and right of the words of a cell. */
const PAD = 1.2;

/**
 * A table: quiet heads between two rules, rows with light rules, boxes to tick and strokes to write
 * on. Rows never break; what finds no room goes on, under the same heads, in the next column.
 *
 * @throws {Refusal} `length-mismatch` for a row with more or fewer cells than there are columns.
 */
export function table(content: Table): Part {
  content.rows.forEach((row, k) => {
    if (row.cells.length !== content.columns.length) {
      throw new Refusal({
        code: 'length-mismatch',
        at: `rows[${k}].cells.length`,
        got: row.cells.length,
        want: `${content.columns.length}, one per column`,
        mend: 'Give an empty string for an empty cell.',
      });
    }
  });
  return from(content, 0);
}

/** The table from row `first` on. */
function from(content: Table, first: number): Part {
  const part: Part = ([x, top], widthMm, roomMm) => {
    const grid = gridOf(content, x, widthMm);
    const head = headOf(content.columns, grid, [x, top], widthMm);
    const rows = content.rows.slice(first);
    const heights = rows.map((row) => rowHeightMm(row, content.columns, grid));
    const fitting = fits(heights, roomMm - head.heightMm);
    if (head.heightMm > roomMm + 1e-9 || (fitting === 0 && rows.length > 0))
      return { items: [], heightMm: 0, rest: part };

    let y = top - head.heightMm;
    const drawn: Item[] = [...head.items];
    for (let k = 0; k < fitting; k++) {
      const heightMm = heights[k] as number;
      const last = k === fitting - 1;
      drawn.push(...rowItems(rows[k] as Row, content.columns, grid, { x, y, widthMm, heightMm, last }));
      y -= heightMm;
    }
    const named = content.label === undefined ? {} : { label: content.label };
    const block = { items: [group('table', drawn, { role: 'table', ...named })], heightMm: top - y };
    return first + fitting < content.rows.length ? { ...block, rest: from(content, first + fitting) } : block;
  };
  return part;
}

/** How many rows from the first fit. */
function fits(heights: readonly number[], roomMm: number): number {
  let used = 0;
  const beyond = heights.findIndex((height) => {
    used += height;
    return used > roomMm + 1e-9;
  });
  return beyond < 0 ? heights.length : beyond;
}

interface Lane {
  readonly leftMm: number;
  readonly rightMm: number;
  readonly fractionMm: number;
}

/** Edges of the columns by their shares, and the room right of the decimal point. */
function gridOf({ columns, rows }: Table, x: number, widthMm: number): Lane[] {
  const shares = columns.reduce((sum, column) => sum + column.share, 0);
  let left = x;
  return columns.map((column, k) => {
    const wide = (column.share / shares) * widthMm;
    const lane = {
      leftMm: left + PAD,
      rightMm: left + wide - PAD,
      fractionMm:
        column.align === 'point' ? Math.max(0, ...rows.map((row) => fractionMm(row.cells[k] as Cell, column))) : 0,
    };
    left += wide;
    return lane;
  });
}

function rowHeightMm(row: Row, columns: readonly Column[], grid: readonly Lane[]): number {
  return Math.max(
    ...row.cells.map((cell, k) => {
      const lane = grid[k] as Lane;
      return cellHeightMm(cell, columns[k] as Column, lane.rightMm - lane.leftMm);
    }),
  );
}

interface RowPlace {
  readonly x: number;
  readonly y: number;
  readonly widthMm: number;
  readonly heightMm: number;
  readonly last: boolean;
}

function rowItems(row: Row, columns: readonly Column[], grid: readonly Lane[], at: RowPlace): Item[] {
  const { x, y, widthMm, heightMm, last } = at;
  const bottom = y - heightMm;
  const cells = row.cells.map((cell, k) => {
    const place: Place = { ...(grid[k] as Lane), topMm: y, bottomMm: bottom, middleMm: y - heightMm / 2 };
    return cellGroup(cell, columns[k] as Column, place);
  });
  const heavy = row.rule === 'heavy' || last;
  const named = {
    ...(row.of === undefined ? {} : { of: row.of }),
    ...(row.label === undefined ? {} : { label: row.label }),
  };
  return [
    ...(row.marked ? markerBand([x, bottom], widthMm, heightMm) : []),
    group('row', cells, { role: 'row', ...named }),
    heavy
      ? line([x, bottom], [x + widthMm, bottom], { layer: 'TEXT', pen: 0.35 })
      : line([x, bottom], [x + widthMm, bottom], { layer: 'TEXT', pen: 0.18, ink: 'rule' }),
  ];
}

/** Heads stand on the lower rule, wrapped where they are long. */
function headOf(columns: readonly Column[], grid: readonly Lane[], [x, top]: Point, widthMm: number) {
  const look = letteringOf({ capMm: CELL_CAP });
  const wrapped = columns.map((column, k) => {
    const lane = grid[k] as Lane;
    return wrap(column.head, lane.rightMm - lane.leftMm, { ...look, face: column.face ?? 'plain' });
  });
  const heightMm = 3 + 4 * Math.max(1, ...wrapped.map((lines) => lines.length));
  const bottom = top - heightMm;
  const cells = columns.map((column, k) => {
    const lane = grid[k] as Lane;
    const lines = wrapped[k] as string[];
    const words = lines.map((words, n) => {
      const y = bottom + 1.8 + 4 * (lines.length - 1 - n);
      const ink = { ...look, face: column.face ?? 'plain', ink: 'quiet' } as const;
      if (column.align === 'end' || column.align === 'point')
        return text(words, [lane.rightMm, y], { ...ink, anchor: 'end' });
      if (column.align === 'middle')
        return text(words, [(lane.leftMm + lane.rightMm) / 2, y], { ...ink, anchor: 'middle' });
      return text(words, [lane.leftMm, y], ink);
    });
    return group(
      'head',
      words.filter((item) => item.text !== ''),
      { role: 'head-cell' },
    );
  });
  const items: Item[] = [
    line([x, top], [x + widthMm, top], { layer: 'TEXT', pen: 0.7 }),
    group('row', cells, { role: 'row' }),
    line([x, bottom], [x + widthMm, bottom], { layer: 'TEXT', pen: 0.35 }),
  ];
  return { items, heightMm };
}
