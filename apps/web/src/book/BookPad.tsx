import { Link } from '@tanstack/react-router';
import pad from '../pad/Pad.module.css';
import { Mark } from '../parts/Mark.tsx';
import { keepTogether } from '../words/keepTogether.ts';
import type { BookEntry } from './entry.ts';

export interface BookPadProps {
  readonly firm: string;
  readonly entries: readonly BookEntry[];
}

/** Beside the Book: what each job asks first, from its own plan. */
export function BookPad({ firm, entries }: BookPadProps) {
  const asked = entries.filter(({ job, summary }) => job.archived === undefined && summary?.first !== undefined);
  return (
    <aside className={pad.pad} aria-label="What the jobs ask" id="pad">
      <div className={pad.boxes}>
        <div>
          <small>the firm</small>
          <b>{firm}</b>
        </div>
        <div>
          <small>asks</small>
          <b>{asked.length}</b>
        </div>
      </div>
      <div className={pad.sum}>
        <p style={{ marginBottom: 'var(--square)' }}>
          <b>First in each job</b>
        </p>
        {asked.length === 0 && <p className="quiet">Nothing yet.</p>}
        <ul>
          {asked.map(({ job, summary }) => (
            <li key={job.id} style={{ marginBottom: 'var(--gap-l)' }}>
              <Link to="/job/$id/$sheet" params={{ id: job.id, sheet: '08' }}>
                <b>{job.name}</b>
              </Link>
              <br />
              {summary?.first && <Mark state={summary.first.state} size={15} />}{' '}
              {keepTogether(summary?.first?.title ?? '')}
            </li>
          ))}
        </ul>
      </div>
    </aside>
  );
}
