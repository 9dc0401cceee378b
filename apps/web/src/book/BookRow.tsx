import { Link } from '@tanstack/react-router';
import { TallyMarks } from '../parts/TallyMarks.tsx';
import { keepTogether } from '../words/keepTogether.ts';
import styles from './BookPage.module.css';
import { type BookEntry, stopsIt } from './entry.ts';
import { RoofSign } from './RoofSign.tsx';
import { StationRule } from './StationRule.tsx';

export interface BookRowProps {
  readonly entry: BookEntry;
  readonly selected: boolean;
}

/** One job of the Book: its roof in small, where it stands, what stops it, how many fail and ask. */
export function BookRow({ entry, selected }: BookRowProps) {
  const { job, summary } = entry;
  const battery = Object.values(job.choices.batteries)[0];
  const sheet = battery && job.choices.equipment[battery.sheet];
  const about = [`${Object.keys(job.choices.modules).length} modules`, sheet?.name].filter(
    (words) => words !== undefined,
  );
  return (
    <li className={styles.row} data-selected={selected || undefined}>
      <Link to="/job/$id/$sheet" params={{ id: job.id, sheet: '08' }} id={`job-${job.id}`}>
        <RoofSign facts={job.facts} choices={job.choices} />
        <span className={styles.name}>
          <b>{job.name}</b>
          <span className="quiet small">{about.join(', ')}</span>
        </span>
        <StationRule state={job.state} />
        <span className={styles.stops}>{keepTogether(stopsIt(entry))}</span>
        {summary === undefined ? <span /> : <TallyMarks tally={summary.tally} tick />}
        <span className={styles.state}>{job.state}</span>
      </Link>
    </li>
  );
}
