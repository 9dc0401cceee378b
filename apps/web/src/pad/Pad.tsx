import type { Change } from '@eaveline/plan';
import { memo } from 'react';
import { Ledger } from '../parts/Ledger.tsx';
import { CopyWorking } from './CopyWorking.tsx';
import { FindingVerdict } from './FindingVerdict.tsx';
import { workingOf } from './goesOnTo.ts';
import { MendList } from './MendList.tsx';
import styles from './Pad.module.css';
import type { PlacedSubject } from './subject.ts';
import { WorkingSum } from './WorkingSum.tsx';

export interface PadProps {
  readonly subject: PlacedSubject | undefined;
  /** Where the figure is used next. */
  readonly next: readonly PlacedSubject[];
  readonly stale: boolean;
  readonly onGo: (subject: PlacedSubject) => void;
  readonly onMend: (changes: readonly Change[], words: string) => void;
  readonly onClose: () => void;
}

/** The calculation pad: how the selected figure came about. Every working is written here, nothing else is. */
export const Pad = memo(function Pad({ subject, next, stale, onGo, onMend, onClose }: PadProps) {
  const working = subject && workingOf(subject);
  const limitWorking = subject?.finding?.limitWorking;
  return (
    <aside className={styles.pad} aria-label="Working" id="pad" tabIndex={-1}>
      <div className={styles.boxes}>
        <div>
          <small>working</small>
          <b>{subject?.name ?? 'nothing selected'}</b>
        </div>
        <div>
          <small>page</small>
          <b>{subject?.page ?? ''}</b>
        </div>
        <button type="button" className={styles.close} onClick={onClose}>
          Close
        </button>
      </div>
      <div className={styles.sum} data-stale={stale || undefined}>
        {stale && <p className={styles.stale}>Being worked out again: these figures are of the state before.</p>}
        {subject === undefined && (
          <p className="quiet">Select a figure, a row or a thing drawn: how it came about is written here.</p>
        )}
        {working && (
          <>
            {subject?.ledger !== undefined && <Ledger label={subject.name} {...subject.ledger} />}
            <WorkingSum working={working} />
          </>
        )}
        {subject?.words?.map((line) => (
          <p key={line}>{line}</p>
        ))}
        {limitWorking && (
          <section className={styles.limit} aria-label="How the limit came about">
            <WorkingSum working={limitWorking} />
          </section>
        )}
        {subject?.finding && <FindingVerdict finding={subject.finding} />}
        {subject?.finding && <MendList finding={subject.finding} onMend={onMend} />}
        {working && subject && <CopyWorking subject={subject} />}
      </div>
      {next.length > 0 && (
        <nav className={styles.next} aria-label="Goes on to">
          <p className="quiet">goes on to</p>
          <ul>
            {next.map((each) => (
              <li key={each.page}>
                <button type="button" onClick={() => onGo(each)}>
                  <span>{each.name}</span>
                  <span className={styles.page}>{each.page}</span>
                </button>
              </li>
            ))}
          </ul>
        </nav>
      )}
    </aside>
  );
});
