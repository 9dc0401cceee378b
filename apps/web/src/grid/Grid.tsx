import { showQuantity } from '@eaveline/job';
import type { Change } from '@eaveline/plan';
import { Fragment, type ReactNode, useId, useLayoutEffect, useRef } from 'react';
import { useJobSession } from '../desk/SessionContext.tsx';
import { Sideways } from '../drawing/Sideways.tsx';
import { useJob } from '../job/JobContext.tsx';
import { valueAt } from '../job/path.ts';
import { Act } from '../parts/Act.tsx';
import { Mark } from '../parts/Mark.tsx';
import { CellInput } from './CellInput.tsx';
import { cellText } from './cell.ts';
import type { CellMarks } from './cellMarks.ts';
import { type Column, columnName, type GridRow, isNumeric, type QuantityColumn } from './column.ts';
import styles from './Grid.module.css';
import { decimalsOf, GridCell } from './GridCell.tsx';
import { pressOnCell } from './gridKeys.ts';
import { PasteReport } from './PasteReport.tsx';
import { holds, type Spot } from './spots.ts';
import { type GridParts, type GridState, useGrid } from './useGrid.ts';
import { useRowWindow } from './useRowWindow.ts';

/** Takes a row out, or says what still hangs on it. */
export interface TakeOutRow {
  readonly changes: (row: GridRow) => readonly Change[];
  /** `Two rows stand on it: move them first.`; undefined where nothing does. */
  readonly hangs?: (row: GridRow) => string | undefined;
}

export interface GridProps extends GridParts {
  readonly selected: string | undefined;
  readonly onSelect: (id: string) => void;
  readonly marks: CellMarks;
  readonly takeOut?: TakeOutRow;
  /** What stands where there is no row yet. */
  readonly none?: string;
}

/** Columns that find room beside each other on a page; of more, each cell is printed with its head. */
const WIDE = 9;

/**
 * A table of the job that is typed in like a spreadsheet: arrows, Enter, Tab, copy, paste, fill down, by the grid
 * pattern of the WAI-ARIA Authoring Practices. One tab stop; a row is selected with the cell one is on.
 */
export function Grid({
  label,
  rows: inJob,
  columns,
  selected,
  onSelect,
  marks,
  add,
  refuses,
  takeOut,
  none,
}: GridProps) {
  const session = useJobSession();
  const grid = useGrid({
    label,
    rows: inJob,
    columns,
    ...(add === undefined ? {} : { add }),
    ...(refuses === undefined ? {} : { refuses }),
  });
  const { rows, document: job, draft, at, block, editing, report, row, follow, acts } = grid;
  const said = useId();
  const room = useRef<HTMLDivElement>(null);
  const table = useRef<HTMLTableElement>(null);
  const dragFrom = useRef<Spot>(undefined);
  const stoodOn = useRef(false);
  const window = useRowWindow(rows.length, at.row);

  useLayoutEffect(() => {
    if (follow === 0) return;
    const cell = table.current?.querySelector<HTMLElement>(`[data-cell="${at.row}:${at.column}"]`);
    cell?.focus();
  }, [follow, at.row, at.column]);

  const subject = row?.subject;
  const select = (id: string | undefined) => {
    if (id !== undefined && id !== selected) onSelect(id);
  };
  const decimals = columns.map((column) =>
    isNumeric(column) ? Math.max(0, ...rows.map(({ id }) => decimalsOf(cellText(column, id, job)))) : 0,
  );
  const typing = (event: { readonly target: EventTarget }) =>
    event.target instanceof HTMLElement && event.target.matches('input, select');

  const cellOf = (on: GridRow, r: number, column: Column, c: number): ReactNode => {
    const here = at.row === r && at.column === c;
    const typed = editing?.at.row === r && editing.at.column === c && column.kind !== 'figure' ? editing : undefined;
    const mark = column.kind === 'figure' ? undefined : marks.get(column.path(on.id).join('.'));
    const Cell = c === 0 ? 'th' : 'td';
    return (
      <Cell
        key={column.id}
        scope={c === 0 ? 'row' : undefined}
        aria-colindex={c + 1}
        aria-readonly={column.kind === 'figure' ? true : undefined}
        aria-selected={holds(block, { row: r, column: c })}
        aria-invalid={typed?.refusal !== undefined ? true : undefined}
        data-cell={`${r}:${c}`}
        data-kind={column.kind}
        data-head={columnName(column)}
        data-numeric={isNumeric(column) || undefined}
        data-here={here || undefined}
        data-refused={typed?.refusal !== undefined || undefined}
        tabIndex={here && typed === undefined ? 0 : -1}
        onFocus={(event) => {
          if (event.target !== event.currentTarget) return;
          if (!(here || holds(block, { row: r, column: c }))) acts.stand({ row: r, column: c });
          if (on !== draft?.row) select(on.subject);
        }}
        onMouseDown={(event) => {
          if (typing(event)) return;
          if (event.shiftKey) {
            event.preventDefault();
            acts.goTo({ row: r, column: c }, true);
            return;
          }
          stoodOn.current = event.currentTarget.matches(':focus');
          dragFrom.current = { row: r, column: c };
          if (!here) acts.stand({ row: r, column: c });
          else acts.letGo();
        }}
        onMouseEnter={(event) => {
          if (event.buttons !== 1 || dragFrom.current === undefined) return;
          acts.pickTo(dragFrom.current, { row: r, column: c });
        }}
        onClick={(event) => {
          const finger = 'pointerType' in event.nativeEvent && event.nativeEvent.pointerType === 'touch';
          if (!typing(event) && here && (finger || stoodOn.current)) acts.begin('pressed');
        }}
      >
        {typed === undefined ? (
          <GridCell column={column} rowId={on.id} job={job} mark={mark} decimals={decimals[c] ?? 0} />
        ) : (
          column.kind !== 'figure' && (
            <CellInput
              column={column}
              label={`${columnName(column)}, ${on.name}`}
              text={typed.text}
              how={typed.how}
              refused={typed.refusal !== undefined}
              said={said}
              onTake={acts.take}
              onPutBack={acts.putBack}
              onPaste={(text) => {
                if (!/[\t\n]/.test(text.trimEnd())) return false;
                acts.putBack();
                acts.paste(text);
                return true;
              }}
            />
          )
        )}
      </Cell>
    );
  };

  return (
    <div className={styles.grid}>
      {rows.length === 0 ? (
        <p className="quiet">{none ?? 'None yet.'}</p>
      ) : (
        <Sideways room={room}>
          <div ref={window.ref} className={styles.box} data-some={window.some || undefined} onScroll={window.onScroll}>
            <table
              ref={table}
              // biome-ignore lint/a11y/noNoninteractiveElementToInteractiveRole: the grid pattern of the Authoring Practices is laid on a table
              role="grid"
              className={styles.table}
              data-wide={columns.length > WIDE || undefined}
              aria-label={label}
              aria-rowcount={rows.length + 1}
              aria-colcount={columns.length}
              aria-multiselectable="true"
              onKeyDown={(event) => {
                if (!typing(event)) pressOnCell(event, grid, () => session.undo());
              }}
              onCopy={(event) => {
                if (typing(event)) return;
                event.preventDefault();
                event.clipboardData.setData('text/plain', acts.copied());
              }}
              onCut={(event) => {
                if (typing(event)) return;
                event.preventDefault();
                event.clipboardData.setData('text/plain', acts.copied());
                acts.clear();
              }}
              onPaste={(event) => {
                if (typing(event)) return;
                event.preventDefault();
                acts.paste(event.clipboardData.getData('text/plain'));
              }}
            >
              <thead>
                <tr aria-rowindex={1}>
                  {columns.map((column, c) => (
                    <th key={column.id} scope="col" aria-colindex={c + 1} data-numeric={isNumeric(column) || undefined}>
                      {column.title}
                      {'unit' in column && column.unit !== undefined && column.unit !== '' && (
                        <span className={styles.unit}> {column.unit}</span>
                      )}
                    </th>
                  ))}
                </tr>
              </thead>
              <tbody>
                {window.runs.map(({ from, to }, i) => (
                  <Fragment key={from}>
                    <Gap rows={from - (window.runs[i - 1]?.to ?? 0)} rowPx={window.rowPx} />
                    {rows.slice(from, to).map((on, k) => (
                      <Fragment key={on.id}>
                        <tr
                          data-row={from + k}
                          data-subject={on.subject}
                          data-selected={selected === on.subject || on === draft?.row || undefined}
                          data-draft={on === draft?.row || undefined}
                          aria-rowindex={from + k + 2}
                        >
                          {columns.map((column, c) => cellOf(on, from + k, column, c))}
                        </tr>
                        {editing?.refusal !== undefined && editing.at.row === from + k && (
                          <tr>
                            <td colSpan={columns.length} className={styles.why}>
                              <Refusal id={said} words={editing.refusal} onPutBack={acts.putBack} />
                            </td>
                          </tr>
                        )}
                      </Fragment>
                    ))}
                  </Fragment>
                ))}
                <Gap rows={rows.length - (window.runs.at(-1)?.to ?? rows.length)} rowPx={window.rowPx} />
              </tbody>
            </table>
          </div>
        </Sideways>
      )}
      {report !== undefined && <PasteReport plan={report} onTakeReads={acts.takeReads} onTakeNone={acts.takeNone} />}
      <div className={styles.foot}>
        {add !== undefined && draft === undefined && <Act onPress={acts.begunRow}>{add.words}</Act>}
        {draft !== undefined && (
          <Act look="plain" onPress={acts.droppedDraft}>
            Drop {draft.row.name}
          </Act>
        )}
        {takeOut !== undefined && row !== undefined && row !== draft?.row && subject === selected && (
          <Act look="plain" onPress={() => takeRowOut(grid, row, label, takeOut)}>
            Take out {row.name}
          </Act>
        )}
        <FootLine grid={grid} marks={marks} selected={selected} />
      </div>
    </div>
  );
}

interface RefusalProps {
  readonly id: string;
  readonly words: string;
  readonly onPutBack: () => void;
}

/** Why a cell is not taken, below its row and as wide as the table is seen; and the way back without a keyboard. */
function Refusal({ id, words, onPutBack }: RefusalProps) {
  const ref = useRef<HTMLDivElement>(null);
  useLayoutEffect(() => {
    if (words !== '') ref.current?.scrollIntoView({ block: 'nearest', inline: 'nearest' });
  }, [words]);
  return (
    <div ref={ref}>
      <span id={id} aria-live="polite">
        <Mark state="fails" size={15} /> {words}
      </span>{' '}
      <Act look="plain" onPress={onPutBack}>
        Put back
      </Act>
    </div>
  );
}

/** Room of the rows that are not drawn. */
function Gap({ rows, rowPx }: { readonly rows: number; readonly rowPx: number }) {
  if (rows <= 0) return null;
  return (
    <tr style={{ height: rows * rowPx }}>
      <td />
    </tr>
  );
}

interface FootLineProps {
  readonly grid: GridState;
  readonly marks: CellMarks;
  readonly selected: string | undefined;
}

/** What was done last, or what is said of the cell one is on. */
function FootLine({ grid: { said, unfinished, row, column, document }, marks, selected }: FootLineProps) {
  const { job } = useJob();
  const inFeet =
    job.choices.rules.pack === 'us' && row !== undefined && column?.kind === 'quantity'
      ? feetWords(column, valueAt(document, column.path(row.id)))
      : undefined;
  const mark =
    row === undefined || row.subject !== selected || column === undefined || column.kind === 'figure'
      ? undefined
      : marks.get(column.path(row.id).join('.'));
  return (
    <p className={styles.said} aria-live="polite">
      {said !== undefined ? (
        <span data-state={said.refused ? 'fails' : undefined}>
          {said.refused && <Mark state="fails" size={15} />} {said.words}
        </span>
      ) : unfinished !== undefined ? (
        <span data-state="ask">
          <Mark state="ask" size={15} /> {unfinished}
        </span>
      ) : (
        <>
          {mark !== undefined && (
            <span data-state={mark.state}>
              <Mark state={mark.state} size={15} /> {mark.words}{' '}
            </span>
          )}
          {inFeet !== undefined && <span>{inFeet} </span>}
          <span className={styles.hint}>
            Type into a cell, Enter takes it. Ctrl C and V copy and paste, Ctrl D fills down.
          </span>
        </>
      )}
    </p>
  );
}

/** A length as a tape in feet has it, where it is a whole sixteenth of an inch. */
function feetWords({ unit, times = 1 }: QuantityColumn, kept: unknown): string | undefined {
  if (typeof kept !== 'number' || (unit !== 'm' && unit !== 'mm')) return undefined;
  const shown = showQuantity(kept * times, unit, 'us');
  return shown.includes('\u2033') ? `${shown}.` : undefined;
}

function takeRowOut({ at, acts }: GridState, row: GridRow, label: string, takeOut: TakeOutRow) {
  const hangs = takeOut.hangs?.(row);
  if (hangs !== undefined) return acts.say(`${row.name} stays. ${hangs}`, true);
  if (acts.change(takeOut.changes(row), `took ${row.name} out of ${label}`)) {
    acts.goTo({ row: Math.max(at.row - 1, 0), column: at.column });
    acts.say(`${row.name} is taken out. Undo puts it back.`);
  }
}
