import type { ReactNode } from 'react';
import { keepTogether } from '../words/keepTogether.ts';
import type { Head } from './head.ts';
import styles from './SheetFrame.module.css';
import { TitleBlock, type TitleCell } from './TitleBlock.tsx';
import { Zones } from './Zones.tsx';

export interface SheetFrameProps {
  readonly no: string;
  readonly head: Head;
  readonly cells: readonly TitleCell[];
  /** What every sheet of an invented job has to say. */
  readonly notice?: string;
  readonly leavesOut?: readonly string[];
  /** Its figures are marked as those of the state before. */
  readonly stale?: boolean;
  /** Its figures are about to change: told at once, to whoever reads by ear. */
  readonly busy?: boolean;
  /** What became of the last act on it. */
  readonly said?: string | undefined;
  readonly children: ReactNode;
}

/** A drawing sheet: trimmed edge, frame, zones, the sentence that heads it, title block at the foot. */
export function SheetFrame({
  no,
  head,
  cells,
  notice,
  leavesOut = [],
  stale = false,
  busy = false,
  said,
  children,
}: SheetFrameProps) {
  return (
    <main className={styles.sheet} id="sheet" tabIndex={-1} aria-busy={busy || undefined}>
      <Zones />
      <div className={styles.inside}>
        <header className={styles.head}>
          <span className={styles.no}>{no}</span>
          <h1>{keepTogether(head.sentence)}</h1>
          {head.quiet !== undefined && <p>{keepTogether(head.quiet)}</p>}
        </header>
        <div className={styles.body} data-stale={stale || undefined}>
          {stale && (
            <p className={styles.stale} role="status">
              Being worked out again: figures underlined in dots are of the state before.
            </p>
          )}
          {said !== undefined && (
            <p className={styles.said} role="status">
              {said}
            </p>
          )}
          {children}
          {leavesOut.length > 0 && (
            <section className={styles.leaves}>
              <h2>Left out here</h2>
              <ul>
                {leavesOut.map((words) => (
                  <li key={words}>{words}</li>
                ))}
              </ul>
            </section>
          )}
          <p className={`${styles.notice} on-paper`}>
            Printed from the screen: measure nothing off. The pack is drawn to scale.
          </p>
          {notice !== undefined && <p className={styles.notice}>{notice}</p>}
        </div>
        <TitleBlock cells={cells} />
      </div>
    </main>
  );
}
