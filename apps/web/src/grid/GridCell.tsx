import { Mark } from '../parts/Mark.tsx';
import { cellText } from './cell.ts';
import type { CellMark } from './cellMarks.ts';
import { type Column, isNumeric } from './column.ts';
import styles from './Grid.module.css';

export interface GridCellProps {
  readonly column: Column;
  readonly rowId: string;
  readonly job: unknown;
  readonly mark: CellMark | undefined;
  /** Most decimals in its column: numbers stand on their points. */
  readonly decimals: number;
}

/** What stands in a cell that is not being typed in. */
export function GridCell({ column, rowId, job, mark, decimals }: GridCellProps) {
  const text = cellText(column, rowId, job);
  const state = column.kind === 'figure' ? column.state?.(rowId) : mark?.state;
  const said = column.kind === 'figure' ? undefined : mark?.words;
  return (
    <>
      {state !== undefined && (
        <span className={styles.mark} title={said}>
          <Mark state={state} size={14} />
          <span className="out-of-sight">{said === undefined ? '' : `${state}: ${said} `}</span>
        </span>
      )}
      {column.kind === 'tick' ? <Tick on={text === 'yes'} /> : text}
      {isNumeric(column) && <Filling text={text} decimals={decimals} />}
    </>
  );
}

function Tick({ on }: { readonly on: boolean }) {
  return (
    <>
      <svg width="18" height="18" viewBox="0 0 18 18" aria-hidden="true">
        <rect className="on-film" x="1" y="1" width="16" height="16" stroke="var(--ink)" strokeWidth="2" />
        {on && <path d="M4 9.4 7.6 13 14 5" fill="none" stroke="var(--ink)" strokeWidth="2.2" />}
      </svg>
      <span className="out-of-sight">{on ? 'yes' : 'no'}</span>
    </>
  );
}

/** Room for the decimals that others of the column have and this one has not: no noughts are added to a measure. */
function Filling({ text, decimals }: { readonly text: string; readonly decimals: number }) {
  const own = decimalsOf(text);
  if (text === '' || own >= decimals) return null;
  return (
    <span className={styles.filling} aria-hidden="true">
      {own === 0 ? '.' : ''}
      {'0'.repeat(decimals - own)}
    </span>
  );
}

/** Figures behind the point of a shown number. */
export function decimalsOf(text: string): number {
  return /\.(\d+)/.exec(text)?.[1]?.length ?? 0;
}
