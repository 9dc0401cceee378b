import { group, letteringOf, line, text } from '../drawing/make.ts';
import { mark, type State, tickBox } from '../drawing/marks.ts';
import type { Conductor, FaceName, Ink, Item, Weight, WireColour } from '../drawing/model.ts';
import { metrics } from '../type/metrics.ts';
import { wrap } from '../type/wrap.ts';

/** What a cell may hold. */
export type Cell =
  | string
  /** Words; `below` stands under them in regular weight. */
  | { readonly words: string; readonly weight?: Weight; readonly ink?: Ink; readonly below?: string }
  /** Boxes to tick. */
  | { readonly boxes: number }
  /** Strokes to write on, in groups: serials go in fours, `[4, 4]`. */
  | { readonly write: readonly number[] }
  /** One stroke across the cell, for a reading or a name. */
  | { readonly stroke: true; readonly unit?: string }
  /** A state: its mark and its word. */
  | { readonly state: State; readonly words: string }
  /** A conductor: a flag of its colour and its letters. */
  | { readonly wire: WireColour; readonly conductor: Conductor };

export type Align = 'start' | 'middle' | 'end' | 'point';

export interface Column {
  readonly head: string;
  /** Share of the table's width, by weight. */
  readonly share: number;
  readonly align?: Align;
  readonly weight?: Weight;
  /** The close face for short words where the plain one does not fit; not for sentences. */
  readonly face?: FaceName;
}

/** A cell's place: left and right edge of its words, the middle of its row, and the column's point. */
export interface Place {
  readonly leftMm: number;
  readonly rightMm: number;
  readonly middleMm: number;
  readonly topMm: number;
  readonly bottomMm: number;
  /** Width kept right of the whole parts. */
  readonly fractionMm: number;
}

export const CELL_CAP = 2.5;
const LINE = 4;

const lettering = (weight: Weight, { face = 'plain' }: Pick<Column, 'face'> = {}) =>
  letteringOf({ capMm: CELL_CAP, weight, face });

/** Lines of the words of a cell; one for everything else. */
export function cellLines(cell: Cell, column: Column, widthMm: number): string[] {
  if (typeof cell === 'string') return wrap(cell, widthMm, lettering(column.weight ?? 400, column));
  if ('state' in cell) return wrap(cell.words, widthMm - 5, lettering(700, column));
  if ('words' in cell) {
    const above = wrap(cell.words, widthMm, lettering(cell.weight ?? column.weight ?? 400, column));
    return cell.below === undefined ? above : [...above, ...wrap(cell.below, widthMm, lettering(400, column))];
  }
  return [''];
}

/** Height a cell asks for: boxes and strokes to write on need their room. */
export function cellHeightMm(cell: Cell, column: Column, widthMm: number): number {
  if (typeof cell !== 'string' && ('write' in cell || 'stroke' in cell)) return 7;
  return Math.max(5.4, 1.4 + LINE * cellLines(cell, column, widthMm).length);
}

/** The whole part of a figure, its sign and its thousands included. */
const WHOLE = /^\D*\d+(?:[\u2009\u202f\u00a0]\d{3})*/;

/** Width of what follows the whole part of a figure: the decimal point, its places, the unit. */
export function fractionMm(cell: Cell, column: Column): number {
  const words = typeof cell === 'string' ? cell : 'words' in cell && !('state' in cell) ? cell.words : '';
  const whole = WHOLE.exec(words);
  if (whole === null) return 0;
  return metrics.widthMm(words.slice(whole[0].length), lettering(column.weight ?? 400, column));
}

/** What stands in a cell. */
export function cellItems(cell: Cell, column: Column, place: Place): Item[] {
  if (typeof cell === 'string') return wordsItems(cell, column, place, column.weight ?? 400, 'ink');
  if ('boxes' in cell) return boxesItems(cell.boxes, place);
  if ('write' in cell) return writeItems(cell.write, place);
  if ('stroke' in cell) return strokeItems(cell.unit, place);
  if ('wire' in cell) return wireItems(cell.wire, cell.conductor, place);
  if ('state' in cell) return stateItems(cell.state, cell.words, column, place);
  const weight = cell.weight ?? column.weight ?? 400;
  if (cell.below === undefined) return wordsItems(cell.words, column, place, weight, cell.ink ?? 'ink');
  return [
    ...wordsItems(cell.words, column, partOf(place, column, [cell.below, 400], 1), weight, cell.ink ?? 'ink'),
    ...wordsItems(cell.below, column, partOf(place, column, [cell.words, weight], -1), 400, cell.ink ?? 'ink'),
  ];
}

function wordsItems(words: string, column: Column, place: Place, weight: Weight, ink: Ink): Item[] {
  const look = { ...lettering(weight, column), ink };
  const lines = wrap(words, place.rightMm - place.leftMm, look);
  const first = place.middleMm + (LINE * (lines.length - 1)) / 2 - CELL_CAP / 2;
  const align = column.align ?? 'start';
  return lines
    .map((words, k) => ({ words, y: first - LINE * k }))
    .filter(({ words }) => words !== '')
    .map(({ words, y }) => {
      if (align === 'start') return text(words, [place.leftMm, y], look);
      if (align === 'middle')
        return text(words, [(place.leftMm + place.rightMm) / 2, y], { ...look, anchor: 'middle' });
      const shift = align === 'point' ? place.fractionMm - fractionMm(words, { ...column, weight }) : 0;
      return text(words, [place.rightMm - shift, y], { ...look, anchor: 'end' });
    });
}

/** The place of one of two texts that share a cell: moved up, or down, by half the height of the other. */
function partOf(place: Place, column: Column, other: Told, way: 1 | -1): Place {
  const [words, weight] = other;
  const lines = wrap(words, place.rightMm - place.leftMm, lettering(weight, column)).length;
  return { ...place, middleMm: place.middleMm + (way * LINE * lines) / 2 };
}

type Told = readonly [words: string, weight: Weight];

function boxesItems(count: number, { leftMm, middleMm }: Place): Item[] {
  return Array.from({ length: count }, (_, k) => tickBox([leftMm + 0.5 + 9 * k, middleMm - 1.6]));
}

function writeItems(groups: readonly number[], { leftMm, rightMm, bottomMm }: Place): Item[] {
  const signs = groups.reduce((sum, n) => sum + n, 0);
  const gap = 2;
  const step = Math.min(5.2, (rightMm - leftMm - gap * (groups.length - 1)) / signs);
  const items: Item[] = [];
  let x = leftMm;
  for (const count of groups) {
    for (let k = 0; k < count; k++, x += step) {
      items.push(line([x, bottomMm + 1.1], [x + step - 0.8, bottomMm + 1.1], { layer: 'TEXT', pen: 0.25 }));
    }
    x += gap;
  }
  return items;
}

function strokeItems(unit: string | undefined, { leftMm, rightMm, bottomMm }: Place): Item[] {
  const wide = unit === undefined ? 0 : metrics.widthMm(unit, lettering(400)) + 1.2;
  return [
    line([leftMm, bottomMm + 1.1], [rightMm - wide, bottomMm + 1.1], { layer: 'TEXT', pen: 0.25 }),
    ...(unit === undefined ? [] : [text(unit, [rightMm, bottomMm + 1.6], { anchor: 'end', ink: 'quiet' })]),
  ];
}

function wireItems(wire: WireColour, conductor: Conductor, { leftMm, middleMm }: Place): Item[] {
  return [
    {
      kind: 'tube',
      points: [
        [leftMm, middleMm],
        [leftMm + 8.5, middleMm],
      ],
      coreMm: 1,
      wire,
      conductor,
      layer: `WIRE-${conductor}`,
      pen: 1,
      line: 'full',
      ink: 'ink',
    },
    text(conductor, [leftMm + 10.5, middleMm - CELL_CAP / 2]),
  ];
}

function stateItems(state: State, words: string, column: Column, place: Place): Item[] {
  const shifted = { ...place, leftMm: place.leftMm + 5 };
  return [
    mark(state, [place.leftMm + 1.7, place.middleMm]),
    ...wordsItems(words, { ...column, align: 'start' }, shifted, 700, state),
  ];
}

/** The items of a cell as one thing for a reader of the table. */
export function cellGroup(cell: Cell, column: Column, place: Place): Item {
  const items = cellItems(cell, column, place);
  return group('cell', items, { role: 'cell' });
}
