import { line, text } from '../drawing/make.ts';
import type { Item, Point } from '../drawing/model.ts';
import { fit } from '../type/wrap.ts';
import type { Frame } from './frame.ts';

/** What a sheet says about itself at its foot. */
export interface TitleBlock {
  readonly firm: string;
  /** A licence number or a telephone, under the firm. */
  readonly firmLine?: string;
  readonly job: string;
  readonly jobLine?: string;
  /** `04.N` */
  readonly sheet: string;
  /** What it was drawn from, `88 facts`, and when: `15 May 2026, 06:10`. */
  readonly drawnFrom: string;
  readonly drawnAt: string;
  /** The rules and their edition. */
  readonly rules: string;
  readonly edition: string;
  /** `1:50`; left out where nothing is drawn to a scale. */
  readonly scale?: string;
  /** Whose line to sign it is. */
  readonly signed: string;
  /** Who has signed and when, above and below the line; `not signed` where it waits. */
  readonly signedBy?: { readonly who: string; readonly when: string };
  /** `4 of 11` */
  readonly page: string;
  /** The document the page belongs to. */
  readonly pack: string;
  readonly issue: string;
}

/** Height over the full width of the frame. */
export const titleBlockMm = 36;

/** Right edges of the cells as parts of the width: three above, six below. */
const UPPER = [58 / 180, 128 / 180, 1];
const LOWER = [28 / 180, 57 / 180, 93 / 180, 128 / 180, 154 / 180, 1];
const PAD = 1.6;
const LABEL_CAP = 2.1;

interface CellPlace {
  readonly left: number;
  readonly right: number;
  readonly top: number;
}

/** The title block, two rows of cells at the foot of the frame. */
export function titleBlockItems(frame: Frame, block: TitleBlock): Item[] {
  const { leftMm, rightMm, bottomMm } = frame;
  const top = bottomMm + titleBlockMm;
  const middle = bottomMm + titleBlockMm / 2;
  const upper = cellsAt(UPPER, frame, top);
  const lower = cellsAt(LOWER, frame, middle);
  return [
    line([leftMm, top], [rightMm, top], { layer: 'FRAME' }),
    line([leftMm, middle], [rightMm, middle], { layer: 'FRAME', pen: 0.35 }),
    ...upper.slice(0, -1).map(({ right }) => divider([right, middle], [right, top])),
    ...lower.slice(0, -1).map(({ right }) => divider([right, bottomMm], [right, middle])),
    ...upperItems(upper, block),
    ...lowerItems(lower, block),
  ];
}

function cellsAt(edges: readonly number[], { leftMm, rightMm }: Frame, top: number): CellPlace[] {
  const at = (part: number): number => leftMm + part * (rightMm - leftMm);
  return edges.map((edge, k) => ({ left: at(k === 0 ? 0 : (edges[k - 1] as number)), right: at(edge), top }));
}

function divider(from: Point, to: Point): Item {
  return line(from, to, { layer: 'FRAME', pen: 0.35 });
}

function upperItems([firm, job, sheet]: readonly CellPlace[], block: TitleBlock): Item[] {
  return [
    ...nameCell(firm as CellPlace, 'firm', block.firm, block.firmLine),
    ...nameCell(job as CellPlace, 'job', block.job, block.jobLine),
    label(sheet as CellPlace, 'sheet'),
    ...fitted(block.sheet, sheet as CellPlace, 12.4, [5, 3.5], 700),
  ];
}

function lowerItems(cells: readonly CellPlace[], block: TitleBlock): Item[] {
  const [facts, rules, scale, signed, page, issue] = cells as [
    CellPlace,
    CellPlace,
    CellPlace,
    CellPlace,
    CellPlace,
    CellPlace,
  ];
  return [
    ...pairCell(facts, 'drawn from', block.drawnFrom, block.drawnAt),
    ...pairCell(rules, 'rules', block.rules, block.edition),
    ...pairCell(scale, 'scale', block.scale ?? 'none', 'measure nothing off'),
    ...signedCell(signed, block),
    ...pairCell(page, 'page', block.page, block.pack),
    ...pairCell(issue, 'issue', block.issue),
  ];
}

/** A name in 3.5 mm letters and a quiet line; a long name takes two lines of the close face. */
function nameCell(cell: CellPlace, words: string, name: string, quiet?: string): Item[] {
  const room = cell.right - cell.left - 2 * PAD;
  const { lines, ...look } = fit(name, room, [3.5, 3, 2.5], { weight: 700, maxLines: quiet === undefined ? 2 : 1 });
  return [
    label(cell, words),
    ...lines.map((line, k) => text(line, [cell.left + PAD, cell.top - 10.2 - 5 * k], look)),
    ...(quiet === undefined ? [] : fitted(quiet, cell, 15.2, [2.5, 2.1], 400)),
  ];
}

function pairCell(cell: CellPlace, words: string, value: string, second?: string): Item[] {
  return [
    label(cell, words),
    ...fitted(value, cell, 10.2, [3, 2.5, 2.1], 400),
    ...(second === undefined ? [] : fitted(second, cell, 15.2, [2.5, 2.1], 400)),
  ];
}

/** The line to sign on. A signature on record stands on it; below it when, or that nobody has signed. */
function signedCell(cell: CellPlace, { signed, signedBy }: TitleBlock): Item[] {
  const lineY = cell.top - (signedBy === undefined ? 14 : 11.6);
  const ruled = line([cell.left + PAD, lineY], [cell.right - PAD, lineY], { layer: 'TEXT', pen: 0.25 });
  if (signedBy === undefined) return [label(cell, signed), ruled];
  const { who, when } = signedBy;
  // without a day nobody has signed: the line stays free
  const [above, below] = when === '' ? ['', who] : [who, when];
  return [
    label(cell, signed),
    ...fitted(above, cell, 10.2, [3, 2.5, 2.1], 400),
    ruled,
    ...fitted(below, cell, 15.6, [2.5, 2.1], 400),
  ];
}

function fitted(words: string, cell: CellPlace, downMm: number, caps: readonly number[], weight: 400 | 700): Item[] {
  if (words === '') return [];
  const { lines, ...look } = fit(words, cell.right - cell.left - 2 * PAD, caps, { weight });
  return [text(lines[0] ?? '', [cell.left + PAD, cell.top - downMm], look)];
}

function label(cell: CellPlace, words: string): Item {
  const { lines, ...look } = fit(words, cell.right - cell.left - 2 * PAD, [LABEL_CAP], { weight: 400 });
  return text(lines[0] ?? '', [cell.left + PAD, cell.top - 4.2], { ...look, ink: 'quiet' });
}
