import { plainFigures, readConductorSize, readQuantity } from '@eaveline/job';
import type { Change } from '@eaveline/plan';
import { valueAt } from '../job/path.ts';
import type { CellRefusal } from './cellRefusal.ts';
import { type Column, mayBeEmpty, type PickColumn, type QuantityColumn, type TypedColumn } from './column.ts';
import { pickTyped } from './pickTyped.ts';

export type ReadCell =
  | { readonly kind: 'changes'; readonly changes: readonly Change[] }
  | { readonly kind: 'refused'; readonly why: CellRefusal };

/** What stands in a cell, as it is shown, edited and copied; empty where the job does not know it. */
export function cellText(column: Column, rowId: string, job: unknown): string {
  if (column.kind === 'figure') return column.show(rowId);
  const kept = valueAt(job, column.path(rowId));
  switch (column.kind) {
    case 'text':
      return typeof kept === 'string' ? kept : '';
    case 'quantity':
      return typeof kept === 'number' ? plainFigures(kept * (column.times ?? 1)) : '';
    case 'whole':
      return typeof kept === 'number' ? plainFigures(kept) : '';
    case 'pick':
      return optionOf(column, kept)?.words ?? (kept === undefined ? '' : String(kept));
    case 'tick':
      return kept === true ? 'yes' : 'no';
    case 'size':
      return sizeWords(kept);
  }
}

/** The same as a spreadsheet takes it: no thin spaces, no true minus. */
export function plainCellText(column: Column, rowId: string, job: unknown): string {
  return cellText(column, rowId, job)
    .replace(/[\u202f\u00a0]/g, column.kind === 'figure' && column.words === true ? ' ' : '')
    .replaceAll('\u2212', '-');
}

/** The option that a kept value is; lists are compared by what is in them. */
export function optionOf(column: PickColumn, kept: unknown) {
  const written = JSON.stringify(kept);
  return column.options.find(({ value }) => JSON.stringify(value) === written);
}

/** Reads typed or pasted text as its column's kind: the changes to the job, or why not. */
export function readCell(column: TypedColumn, rowId: string, typed: string, job: unknown): ReadCell {
  const path = column.path(rowId);
  const text = typed.replace(/\s+/g, ' ').trim();
  if (text === '') return cleared(column, rowId);
  const taken = (value: unknown): ReadCell => ({ kind: 'changes', changes: [{ path, value }] });
  switch (column.kind) {
    case 'text':
      return taken(text);
    case 'quantity':
      return readNumber(column, text, taken);
    case 'whole': {
      const read = readQuantity(text, '');
      if (read.kind === 'refused') return refused(read);
      if (read.kind !== 'value' || !Number.isInteger(read.value))
        return refused({
          found: `${text} is no whole number`,
          wanted: 'a whole number',
          mend: 'Type it without a part.',
        });
      return taken(read.value);
    }
    case 'pick': {
      const picked = pickTyped(column, text);
      return 'option' in picked ? taken(picked.option.value) : refused(picked.why);
    }
    case 'tick': {
      const ticked = tickOf(text);
      if (ticked === undefined)
        return refused({ found: `${text} is neither yes nor no`, wanted: 'yes or no', mend: 'Type yes or no.' });
      return {
        kind: 'changes',
        changes: [...(column.also?.(rowId) ?? []), { path, value: ticked }],
      };
    }
    case 'size':
      return readSize(text, path, valueAt(job, path));
  }
}

/** What emptying a cell does: the field leaves the job where it may, else it is refused. */
export function cleared(column: TypedColumn, rowId: string): ReadCell {
  const path = column.path(rowId);
  if (column.kind === 'tick') return { kind: 'changes', changes: [{ path, value: false }] };
  if (mayBeEmpty(column)) return { kind: 'changes', changes: [{ path, value: undefined }] };
  return refused({
    found: 'Nothing stands there',
    wanted: `${column.title} of this row`,
    mend: 'It cannot be left empty.',
  });
}

/** A refusal as it stands at the cell. */
export function refusalSentence({ found, mend }: CellRefusal): string {
  return `${found}. ${mend}`;
}

function readNumber({ unit, times = 1 }: QuantityColumn, text: string, taken: (value: number) => ReadCell): ReadCell {
  const read = readQuantity(text, unit);
  if (read.kind === 'refused') return refused(read);
  if (read.kind === 'empty') throw new Error('A text that is not empty was read as nothing');
  return taken(times === 1 ? read.value : Number((read.value / times).toPrecision(12)));
}

function tickOf(text: string): boolean | undefined {
  if (/^(yes|y|true|x|1|✓)$/i.test(text)) return true;
  if (/^(no|n|false|0|-|−)$/i.test(text)) return false;
  return undefined;
}

function readSize(text: string, path: readonly string[], kept: unknown): ReadCell {
  const read = readConductorSize(text);
  if (read.kind === 'refused') return refused(read);
  if (read.kind === 'empty') throw new Error('A text that is not empty was read as nothing');
  const { areaMm2: _area, awg: _gauge, ...others } = (kept ?? { material: 'copper' }) as Record<string, unknown>;
  const size = read.kind === 'area' ? { areaMm2: read.areaMm2 } : { awg: read.awg };
  return { kind: 'changes', changes: [{ path, value: { ...others, ...size } }] };
}

function sizeWords(kept: unknown): string {
  const area = valueAt(kept, ['areaMm2']);
  if (typeof area === 'number') return `${plainFigures(area)}\u00a0mm²`;
  const awg = valueAt(kept, ['awg']);
  if (typeof awg !== 'string') return '';
  return awg.includes('kcmil') ? awg : `${awg}\u00a0AWG`;
}

function refused({ found, wanted, mend }: CellRefusal): ReadCell {
  return { kind: 'refused', why: { found, wanted, mend } };
}
