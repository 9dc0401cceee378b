import { Link } from '@tanstack/react-router';
import type { ReactNode } from 'react';
import { pullOut } from '../file/pullOut.ts';
import { TallyMarks } from '../parts/TallyMarks.tsx';
import { keepTogether } from '../words/keepTogether.ts';
import styles from './BookRow.module.css';
import { type BookEntry, stopsIt } from './entry.ts';
import type { Hit } from './find.ts';
import { whyFound } from './find.ts';
import { RoofSign } from './RoofSign.tsx';
import { StationRule } from './StationRule.tsx';

export interface BookRowProps {
  readonly hit: Hit<BookEntry>;
  readonly kept: string;
  readonly selected: boolean;
  /** True while what can be done with it is shown below it. */
  readonly open: boolean;
  readonly onOpen: () => void;
  /** What can be done with it; drawn while it is open. */
  readonly children: ReactNode;
}

/** One job of the Book: its roof in small, where it stands, what stops it, what it holds at, where it is kept. */
export function BookRow({ hit, kept, selected, open, onOpen, children }: BookRowProps) {
  const { entry, fields, goes } = hit;
  const { job, summary } = entry;
  const battery = Object.values(job.choices.batteries)[0];
  const sheet = battery && job.choices.equipment[battery.sheet];
  const count = Object.keys(job.choices.modules).length;
  const about = [count === 0 ? 'no module yet' : `${count} modules`, sheet?.name].filter(
    (words) => words !== undefined,
  );
  const why = whyFound(fields, summary?.unitPlaces);
  const acts = `acts-${job.id}`;
  return (
    <li className={styles.row} data-selected={selected || undefined}>
      <div className={styles.line}>
        <Link
          to="/job/$id/$sheet"
          params={{ id: job.id, sheet: goes?.sheet ?? '08' }}
          search={goes?.at === undefined ? {} : { at: goes.at }}
          id={`job-${job.id}`}
          title={`Opens ${job.name} on sheet ${goes?.sheet ?? '08, its checks'}`}
          onDragStart={({ dataTransfer }) => pullOut(dataTransfer, job)}
        >
          <RoofSign facts={job.facts} choices={job.choices} />
          <span className={styles.name}>
            <b>{job.name}</b>
            <span className="quiet small">{about.join(', ')}</span>
            <span className="quiet small">{kept}</span>
          </span>
          <span className={styles.station}>
            <StationRule state={job.state} />
            <span className="quiet small" aria-hidden="true">
              {job.state}
            </span>
          </span>
          <span className={styles.stops}>
            {keepTogether(stopsIt(entry))}
            {summary?.nextHold !== undefined && (
              <span className="quiet">Next hold point: {keepTogether(summary.nextHold.words)}.</span>
            )}
          </span>
          {summary === undefined ? <span /> : <TallyMarks tally={summary.tally} tick />}
          {why.length > 0 && <span className={styles.why}>Found by {why.join('; ')}</span>}
        </Link>
        <button
          type="button"
          className={styles.more}
          aria-expanded={open}
          aria-controls={acts}
          aria-label={`What can be done with ${job.name}`}
          title={open ? 'Close' : 'Save, duplicate, archive'}
          onClick={onOpen}
        >
          <svg width="18" height="18" viewBox="0 0 18 18" aria-hidden="true">
            <path className="pen50" d={open ? 'M3 12 9 6l6 6' : 'M3 6l6 6 6-6'} />
          </svg>
          <span className="quiet small" aria-hidden="true">
            acts
          </span>
        </button>
      </div>
      {open && (
        <div id={acts} className={styles.acts}>
          {children}
        </div>
      )}
    </li>
  );
}
