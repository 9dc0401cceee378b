import type { Change } from '@eaveline/plan';
import { useEffect, useState } from 'react';
import { useJob } from '../job/JobContext.tsx';
import { valueAt, withValueAt } from '../job/path.ts';
import { counted } from '../words/count.ts';
import { type AddRow, draftWords, lackingIn, withDraft } from './addRow.ts';
import type { Leave } from './CellInput.tsx';
import { cellText, cleared, plainCellText, readCell, refusalSentence } from './cell.ts';
import type { Column, GridRow, RowRefusal, TypedColumn } from './column.ts';
import { useKeptDraft } from './keptDraft.ts';
import { type PastePlan, planPaste } from './paste.ts';
import { beyondWords, pastedWords } from './pasteWords.ts';
import { type Block, blockOf, cellCount, kept, type Spot, tabbed } from './spots.ts';
import { readTable, writeTable } from './tableText.ts';

/** A cell that is being typed in. */
export interface Editing {
  readonly at: Spot;
  readonly text: string;
  readonly how: 'typed' | 'opened' | 'pressed';
  readonly refusal: string | undefined;
}

export interface Said {
  readonly words: string;
  readonly refused: boolean;
}

export interface GridParts {
  readonly label: string;
  readonly rows: readonly GridRow[];
  readonly columns: readonly Column[];
  /** How it gets another row, where it may. */
  readonly add?: AddRow;
  /** Why a row cannot be as it stands in a document, where its cells rule each other out. */
  readonly refuses?: RowRefusal;
}

/** Where a table stands: the cell one is on, the cells picked, what is typed, what is said; and its acts. */
export function useGrid({ label, rows: inJob, columns, add, refuses }: GridParts) {
  const { job, edit } = useJob();
  const [draft, setDraft] = useKeptDraft(
    `eaveline.draft ${job.id} ${label}`,
    inJob.map(({ id }) => id),
  );
  const rows = draft === undefined ? inJob : [...inJob, draft.row];
  const document = withDraft(job, draft);
  const size = { rows: rows.length, columns: columns.length };
  const [spot, setSpot] = useState<Spot>({ row: 0, column: 0 });
  const [anchor, setAnchor] = useState<Spot>();
  const [editing, setEditing] = useState<Editing>();
  const [said, setSaid] = useState<Said>();
  const [report, setReport] = useState<PastePlan>();
  /** The browser's focus follows the cell after the next drawing. */
  const [follow, setFollow] = useState(0);

  /** Id of a row that has just come into the job: it lies where the job puts it, and the focus goes along. */
  const [landed, setLanded] = useState<string>();
  useEffect(() => {
    const to = landed === undefined ? -1 : inJob.findIndex(({ id }) => id === landed);
    if (to < 0) return;
    setLanded(undefined);
    setSpot(({ column }) => ({ row: to, column }));
    setFollow((n) => n + 1);
  }, [landed, inJob]);

  const at = kept(spot, size);
  const block: Block = blockOf(at, anchor === undefined ? at : kept(anchor, size));
  const row = rows[at.row];
  const column = columns[at.column];

  function goTo(to: Spot, extend = false) {
    setAnchor(extend ? (anchor ?? at) : undefined);
    setSpot(to);
    setSaid(undefined);
    setFollow((n) => n + 1);
  }

  /** Focus came to a cell by itself: Tab, a press, a reader of screens. */
  function stand(to: Spot) {
    if (to.row === at.row && to.column === at.column) return;
    setAnchor(undefined);
    setSpot(to);
    setSaid(undefined);
  }

  const say = (words: string, refused = false) => setSaid({ words, refused });

  function begin(how: Editing['how'], letter = '') {
    if (row === undefined || column === undefined) return;
    if (column.kind === 'figure') return say(`${column.title} is worked out, and not typed.`);
    if (column.kind === 'tick') return toggle(column, row);
    setSaid(undefined);
    const text = how === 'typed' ? letter : cellText(column, row.id, document);
    setEditing({ at, text, how, refusal: undefined });
  }

  function toggle(of: TypedColumn, on: GridRow) {
    const next = cellText(of, on.id, document) === 'yes' ? 'no' : 'yes';
    const read = readCell(of, on.id, next, document);
    if (read.kind === 'changes') change(read.changes, `${on.name}: ${of.title}`);
  }

  /**
   * Takes changes, or gives back why not. What is typed into a draft stays with it until it lacks nothing; then all
   * of it goes into the job at once.
   */
  function put(changes: readonly Change[], words: string): string | undefined {
    const impossible = impossibleBy(changes);
    if (impossible !== undefined) return impossible;
    if (draft === undefined || add === undefined || !changes.some(inDraft)) return edit(changes, words);
    const grown = { ...draft, changes: [...draft.changes, ...changes] };
    if (lackingIn(columns, draft.row.id, withDraft(job, grown)).length > 0) {
      setDraft(grown);
      return undefined;
    }
    const refusal = edit(grown.changes, add.words.replace(/^Add /, 'added '));
    if (refusal === undefined) {
      setLanded(draft.row.id);
      setDraft(undefined);
    }
    return refusal;
  }

  /** Why a row could not be after these changes; one that already could not be may be mended cell by cell. */
  function impossibleBy(changes: readonly Change[]): string | undefined {
    if (refuses === undefined) return undefined;
    const after = changes.reduce<unknown>((whole, { path, value }) => withValueAt(whole, path, value), document);
    for (const { id, name } of rows) {
      const why = refuses(id, after);
      if (why === undefined || refuses(id, document) !== undefined) continue;
      return `${changes.length > 1 ? `${name}: ` : ''}${refusalSentence(why)}`;
    }
    return undefined;
  }

  /** True for a change that belongs to the row being filled in. */
  function inDraft({ path }: Change): boolean {
    return columns.some(
      (of) => of.kind !== 'figure' && draft !== undefined && of.path(draft.row.id).join('.') === path.join('.'),
    );
  }

  /** Lays an empty row below the last, and goes to its first cell. */
  function begunRow() {
    if (add === undefined) return;
    if (draft === undefined) setDraft({ row: add.row(), changes: [] });
    setEditing(undefined);
    goTo({ row: inJob.length, column: 0 });
  }

  function droppedDraft() {
    setDraft(undefined);
    goTo({ row: Math.max(inJob.length - 1, 0), column: at.column });
  }

  /** Makes a change, or says why not; true where it was made. */
  function change(changes: readonly Change[], words: string): boolean {
    const refusal = put(changes, words);
    if (refusal !== undefined) say(`Not taken. ${refusal}`, true);
    return refusal === undefined;
  }

  function take(text: string, leave: Leave) {
    if (editing === undefined) return;
    const on = rows[editing.at.row];
    const of = columns[editing.at.column];
    if (on === undefined || of === undefined || of.kind === 'figure') return setEditing(undefined);
    if (text !== cellText(of, on.id, document)) {
      const read = readCell(of, on.id, text, document);
      const refusal =
        read.kind === 'refused' ? refusalSentence(read.why) : put(read.changes, `${on.name}: ${of.title}`);
      if (refusal !== undefined) return setEditing({ ...editing, text, refusal });
    }
    setEditing(undefined);
    if (leave !== 'gone') goTo(after(editing.at, leave));
  }

  function after(from: Spot, leave: Leave): Spot {
    if (leave === 'right' || leave === 'left') return tabbed(from, leave === 'left', size);
    const by = leave === 'down' ? 1 : leave === 'up' ? -1 : 0;
    return kept({ row: from.row + by, column: from.column }, size);
  }

  function putBack() {
    if (editing === undefined) return;
    setEditing(undefined);
    goTo(editing.at);
  }

  /** The cells picked that can be typed in, row by row. */
  function picked(): { readonly row: GridRow; readonly column: TypedColumn; readonly at: Spot }[] {
    return rows
      .slice(block.top, block.bottom + 1)
      .flatMap((each, i) =>
        columns
          .slice(block.left, block.right + 1)
          .flatMap((of, k) =>
            of.kind === 'figure' ? [] : [{ row: each, column: of, at: { row: block.top + i, column: block.left + k } }],
          ),
      );
  }

  /** Empties what may be empty; what may not stays, and is counted. */
  function clear() {
    const cells = picked().map((cell) => cleared(cell.column, cell.row.id));
    const changes = cells.flatMap((cell) => (cell.kind === 'changes' ? cell.changes : []));
    const stay = cellCount(block) - changes.length;
    const stays = stay === 0 ? '' : `${counted(stay, 'cell')} cannot be left empty`;
    if (changes.length === 0) return say(stay === 1 ? 'It cannot be left empty.' : `${stays}.`, true);
    if (change(changes, `emptied ${changes.length} ${changes.length === 1 ? 'cell' : 'cells'} of ${label}`))
      say(`${counted(changes.length, 'cell')} emptied.${stays === '' ? '' : ` ${stays}.`}`);
  }

  /** The top cell of each column picked goes down into those below it; of a single cell, the one above comes down. */
  function fillDown() {
    const single = block.top === block.bottom;
    const source = rows[single ? block.top - 1 : block.top];
    if (source === undefined) return say('No row above to fill from.', true);
    const into = picked().filter((cell) => cell.row !== source);
    const changes = into.map(({ row: each, column: of }) => ({
      path: of.path(each.id),
      value: valueAt(document, of.path(source.id)),
    }));
    if (changes.length === 0) return say('Nothing here can be filled: it is worked out.', true);
    if (change(changes, `filled ${changes.length} ${changes.length === 1 ? 'cell' : 'cells'} of ${label}`))
      say(`${counted(changes.length, 'cell')} filled from ${source.name}.`);
  }

  function copied(): string {
    const words = rows
      .slice(block.top, block.bottom + 1)
      .map((each) => columns.slice(block.left, block.right + 1).map((of) => plainCellText(of, each.id, document)));
    say(`${counted(cellCount(block), 'cell')} copied.`);
    return writeTable(words);
  }

  function paste(text: string) {
    const table = readTable(text);
    if (table.length === 0) return say('Nothing to paste.', true);
    const plan = planPaste(table, {
      job,
      document,
      rows,
      columns,
      into: block,
      ...(refuses === undefined ? {} : { refuses }),
    });
    if (plan.refused.length > 0) return setReport(plan);
    write(plan);
  }

  function write(plan: PastePlan) {
    setReport(undefined);
    goTo(at);
    const past = beyondWords(plan.beyond);
    if (plan.reads.length === 0) return say(`Nothing of it is taken.${past === undefined ? '' : ` ${past}`}`, true);
    const words = pastedWords(plan.reads.length, label);
    if (change(plan.reads.flat(), words))
      say(`${counted(plan.reads.length, 'cell')} pasted.${past === undefined ? '' : ` ${past}`} Undo takes it back.`);
  }

  function takeNone() {
    setReport(undefined);
    goTo(at);
    say('None taken. The table is as it was.');
  }

  const lacks = draft === undefined ? [] : lackingIn(columns, draft.row.id, document);
  return {
    rows,
    document,
    draft,
    /** What the row being filled in still lacks, as a sentence. */
    unfinished: lacks.length === 0 ? undefined : draftWords(lacks),
    at,
    block,
    range: anchor !== undefined,
    row,
    column,
    editing,
    said,
    report,
    follow,
    size,
    acts: {
      goTo,
      stand,
      begin,
      take,
      putBack,
      clear,
      fillDown,
      copied,
      paste,
      takeReads: () => report !== undefined && write(report),
      takeNone,
      change,
      begunRow,
      droppedDraft,
      say,
      letGo: () => setAnchor(undefined),
      pickTo: (from: Spot, to: Spot) => {
        setAnchor(from);
        setSpot(to);
        setFollow((n) => n + 1);
      },
    },
  };
}

export type GridState = ReturnType<typeof useGrid>;
