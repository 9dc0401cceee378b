import type { Conductor } from '@eaveline/job';
import type { Change, Finding } from '@eaveline/plan';
import type { CellRefusal } from './cellRefusal.ts';

/** One row of a table: a thing of the job. */
export interface GridRow {
  readonly id: string;
  /** As people call it: stands in reports and in what can be taken back. */
  readonly name: string;
  /** Id of the subject that is selected with it. */
  readonly subject: string;
}

/** Why a row cannot be as it stands in a document, where its cells rule each other out. */
export type RowRefusal = (rowId: string, document: unknown) => CellRefusal | undefined;

/** Where a cell's value stands in the job, by the id of its row. */
export type PathOf = (rowId: string) => readonly string[];

interface Titled {
  readonly id: string;
  readonly title: string;
}

export interface TextColumn extends Titled {
  readonly kind: 'text';
  readonly path: PathOf;
  readonly optional?: boolean;
}

/** A number with a unit, typed in that unit or in another. */
export interface QuantityColumn extends Titled {
  readonly kind: 'quantity';
  readonly path: PathOf;
  /** Shown in the head, and taken where none is typed. */
  readonly unit: string;
  /** Shown = kept × times, where shown in another unit than kept. */
  readonly times?: number;
  readonly optional?: boolean;
}

export interface WholeColumn extends Titled {
  readonly kind: 'whole';
  readonly path: PathOf;
  readonly optional?: boolean;
}

export interface Option {
  /** As the job keeps it; a list counts as one value. */
  readonly value: unknown;
  readonly words: string;
  /** Size of its conductor, where it is a cable: such an option is also found by its size. */
  readonly size?: Pick<Conductor, 'areaMm2' | 'awg'>;
}

export interface PickColumn extends Titled {
  readonly kind: 'pick';
  readonly path: PathOf;
  readonly options: readonly Option[];
  /** What an empty cell means; where given, it may be left out of the job. */
  readonly none?: string;
}

export interface TickColumn extends Titled {
  readonly kind: 'tick';
  readonly path: PathOf;
  /** What has to stand beside it in the job, where nothing does yet. */
  readonly also?: (rowId: string) => readonly Change[];
}

/** Size of a conductor: metric area or gauge, in the group its path leads to. */
export interface SizeColumn extends Titled {
  readonly kind: 'size';
  readonly path: PathOf;
}

/** Worked out from the job: shown, never typed. */
export interface FigureColumn extends Titled {
  readonly kind: 'figure';
  readonly unit?: string;
  readonly show: (rowId: string) => string;
  /** How it stands, where a rule judges it. */
  readonly state?: (rowId: string) => Finding['state'] | undefined;
  /** Words rather than a number. */
  readonly words?: boolean;
}

export type TypedColumn = TextColumn | QuantityColumn | WholeColumn | PickColumn | TickColumn | SizeColumn;
export type Column = TypedColumn | FigureColumn;

/** True for columns of numbers, which stand at the right on their points. */
export function isNumeric(column: Column): boolean {
  return column.kind === 'quantity' || column.kind === 'whole' || (column.kind === 'figure' && column.words !== true);
}

/** `eave, m`: a column as a report names it. */
export function columnName(column: Column): string {
  const unit = column.kind === 'quantity' || column.kind === 'figure' ? column.unit : undefined;
  return unit === undefined || unit === '' ? column.title : `${column.title}, ${unit}`;
}

/** True for cells that may be left empty; a tick is always one thing or the other. */
export function mayBeEmpty(column: TypedColumn): boolean {
  switch (column.kind) {
    case 'tick':
    case 'size':
      return true;
    case 'pick':
      return column.none !== undefined;
    default:
      return column.optional === true;
  }
}
