import { useEffect, useRef } from 'react';
import { Act } from '../parts/Act.tsx';
import { Mark } from '../parts/Mark.tsx';
import table from '../parts/Table.module.css';
import { counted, sentence } from '../words/count.ts';
import styles from './Grid.module.css';
import type { PastePlan } from './paste.ts';
import { beyondWords } from './pasteWords.ts';

export interface PasteReportProps {
  readonly plan: PastePlan;
  readonly onTakeReads: () => void;
  readonly onTakeNone: () => void;
}

/** What a paste holds that is not taken, cell by cell; nothing is written until one of its two acts is pressed. */
export function PasteReport({ plan, onTakeReads, onTakeNone }: PasteReportProps) {
  const { reads, refused, beyond } = plan;
  const ref = useRef<HTMLElement>(null);
  useEffect(() => ref.current?.focus(), []);
  const past = beyondWords(beyond);
  return (
    <section
      ref={ref}
      tabIndex={-1}
      className={styles.report}
      aria-label="What was pasted"
      onKeyDown={(event) => {
        if (event.key !== 'Escape') return;
        event.preventDefault();
        onTakeNone();
      }}
    >
      <p>
        <Mark state="fails" size={16} />{' '}
        <b>
          {sentence(counted(refused.length, 'cell'))} of {reads.length + refused.length}{' '}
          {refused.length === 1 ? 'does' : 'do'} not read. Nothing is written yet.
        </b>
      </p>
      {past !== undefined && <p>{past}</p>}
      <div className={table.scroll}>
        <table className={`${table.table} ${styles.refused}`}>
          <thead>
            <tr>
              <th scope="col">Row</th>
              <th scope="col">column</th>
              <th scope="col">found</th>
              <th scope="col">wanted</th>
              <th scope="col">mend</th>
            </tr>
          </thead>
          <tbody>
            {refused.map(({ row, column, found, wanted, mend }) => (
              <tr key={`${row}\n${column}`}>
                <th scope="row">{row}</th>
                <td data-head="column">{column}</td>
                <td data-head="found">{found}</td>
                <td data-head="wanted">{wanted}</td>
                <td data-head="mend">{mend}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      <p className={styles.acts}>
        {reads.length > 0 && <Act onPress={onTakeReads}>Take the {reads.length} that read</Act>}
        <Act onPress={onTakeNone}>Take none</Act>
      </p>
    </section>
  );
}
