import type { Job, JobRemark } from '@eaveline/job';
import type { Change } from '@eaveline/plan';
import { changeJob } from '../job/changeJob.ts';
import { withValueAt } from '../job/path.ts';
import { cellText, plainCellText, readCell } from './cell.ts';
import type { CellRefusal } from './cellRefusal.ts';
import { type Column, columnName, type GridRow, type RowRefusal } from './column.ts';
import type { Block } from './spots.ts';

/** A pasted cell that was not read, or that the job does not take. */
export interface RefusedCell extends CellRefusal {
  readonly row: string;
  readonly column: string;
}

/** What a paste would do. Nothing of it is done yet. */
export interface PastePlan {
  /** Changes of each cell that reads. */
  readonly reads: readonly (readonly Change[])[];
  readonly refused: readonly RefusedCell[];
  /** Rows and columns of the text that lie past the table's last: never taken. */
  readonly beyond: { readonly rows: number; readonly columns: number };
}

export interface PasteInto {
  readonly job: Job;
  /** The same with a row in it that is still being filled in. */
  readonly document: unknown;
  readonly rows: readonly GridRow[];
  readonly columns: readonly Column[];
  /** The cells picked: the paste begins at its corner; a single cell of text fills all of it. */
  readonly into: Block;
  /** Why a row cannot be as it stands in a document. */
  readonly refuses?: RowRefusal;
}

interface Cell {
  readonly row: GridRow;
  readonly column: Column;
  readonly changes: readonly Change[];
}

/**
 * Reads a pasted table, every cell by its column's kind, then asks the job whether it would take them.
 *
 * A cell that is worked out may be pasted over with what it shows, as when a copied block comes back; anything else
 * there is refused.
 */
export function planPaste(table: readonly (readonly string[])[], target: PasteInto): PastePlan {
  const { job, document, rows, columns, into, refuses } = target;
  const spread = spreadOver(table, into);
  const wide = Math.max(...spread.map((line) => line.length), 0);
  const beyond = {
    rows: Math.max(into.top + spread.length - rows.length, 0),
    columns: Math.max(into.left + wide - columns.length, 0),
  };
  const cells: Cell[] = [];
  const refused: RefusedCell[] = [];
  for (const [i, line] of spread.entries()) {
    for (const [k, text] of line.entries()) {
      const row = rows[into.top + i];
      const column = columns[into.left + k];
      if (row === undefined || column === undefined) continue;
      const named = { row: row.name, column: columnName(column) };
      if (column.kind === 'figure') {
        const why = overFigure(column, row.id, text, document);
        if (why !== undefined) refused.push({ ...named, ...why });
        continue;
      }
      const read = readCell(column, row.id, text, document);
      if (read.kind === 'refused') refused.push({ ...named, ...read.why });
      else cells.push({ row, column, changes: read.changes });
    }
  }
  const asked = askJob(job, cells);
  const stood = refuses === undefined ? { taken: asked.taken, refused: [] } : askRows(document, asked.taken, refuses);
  return {
    reads: stood.taken.map(({ changes }) => changes),
    refused: [...refused, ...asked.refused, ...stood.refused],
    beyond,
  };
}

/** One cell of text fills every cell picked, as in any spreadsheet. */
function spreadOver(
  table: readonly (readonly string[])[],
  { top, bottom, left, right }: Block,
): readonly (readonly string[])[] {
  const [only] = table;
  const text = only?.[0];
  if (table.length !== 1 || only?.length !== 1 || text === undefined) return table;
  return Array.from({ length: bottom - top + 1 }, () => Array.from({ length: right - left + 1 }, () => text));
}

function overFigure(column: Column, rowId: string, text: string, job: unknown): CellRefusal | undefined {
  const same = [cellText(column, rowId, job), plainCellText(column, rowId, job), ''];
  if (same.includes(text.trim())) return undefined;
  return {
    found: `${text.trim()} stands where a figure is worked out`,
    wanted: 'nothing there',
    mend: 'Leave this column out of what you copy.',
  };
}

/**
 * Which cells the job takes. All at once first: two cells may be sound only together. Where that is refused, each
 * alone; then, while the rest is still refused, the cell that the refusal names.
 */
function askJob(
  job: Job,
  cells: readonly Cell[],
): { readonly taken: readonly Cell[]; readonly refused: RefusedCell[] } {
  const refused: RefusedCell[] = [];
  const putOut = ({ row, column }: Cell, { found, wanted, mend }: JobRemark) =>
    refused.push({ row: row.name, column: columnName(column), found: `${found} cannot be`, wanted, mend });
  if (refusalOf(job, cells) === undefined) return { taken: cells, refused };
  let taken = cells.filter((cell) => {
    const why = refusalOf(job, [cell]);
    if (why !== undefined) putOut(cell, why);
    return why === undefined;
  });
  for (let why = refusalOf(job, taken); why !== undefined; why = refusalOf(job, taken)) {
    const at = why.at;
    const named = taken.find(({ changes }) => changes.some(({ path }) => touches(path.join('.'), at))) ?? taken.at(-1);
    if (named === undefined) throw new Error(`A job without a change is refused at ${at}`);
    putOut(named, why);
    taken = taken.filter((cell) => cell !== named);
  }
  return { taken, refused };
}

/**
 * Which cells leave every row possible. All of a row together first; where that cannot be, the cell that alone makes
 * it impossible goes, else the last of them, until the rest can be. A row that already could not be is let be.
 */
function askRows(
  document: unknown,
  cells: readonly Cell[],
  refuses: RowRefusal,
): { readonly taken: readonly Cell[]; readonly refused: readonly RefusedCell[] } {
  const refused: RefusedCell[] = [];
  const whyNot = (row: GridRow, some: readonly Cell[]) => refuses(row.id, withCells(document, some));
  let taken = cells;
  for (const row of new Set(cells.map((cell) => cell.row))) {
    if (whyNot(row, []) !== undefined) continue;
    for (let why = whyNot(row, taken); why !== undefined; why = whyNot(row, taken)) {
      const own = taken.filter((cell) => cell.row === row);
      const out = own.find((cell) => whyNot(row, [cell]) !== undefined) ?? own.at(-1);
      if (out === undefined) throw new Error(`${row.name} becomes impossible by no cell of its own`);
      refused.push({ row: row.name, column: columnName(out.column), ...(whyNot(row, [out]) ?? why) });
      taken = taken.filter((cell) => cell !== out);
    }
  }
  return { taken, refused };
}

function withCells(document: unknown, cells: readonly Cell[]): unknown {
  return cells
    .flatMap(({ changes }) => changes)
    .reduce((whole, { path, value }) => withValueAt(whole, path, value), document);
}

function refusalOf(job: Job, cells: readonly Cell[]): JobRemark | undefined {
  if (cells.length === 0) return undefined;
  const changed = changeJob(
    job,
    cells.flatMap(({ changes }) => changes),
  );
  return 'refusal' in changed ? changed.refusal : undefined;
}

function touches(path: string, at: string): boolean {
  return path === at || at.startsWith(`${path}.`) || path.startsWith(`${at}.`);
}
