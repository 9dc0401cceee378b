import type { Job } from '@eaveline/job';
import { type Finding, type SheetNo, type Tally, tally as tallyOf } from '@eaveline/plan';
import { Link } from '@tanstack/react-router';
import type { Keeping } from '../job/jobSession.ts';
import { TallyMarks } from '../parts/TallyMarks.tsx';
import { House } from './House.tsx';
import { jobLines } from './jobLines.ts';
import { keepingWords } from './keepingWords.ts';
import { Papers } from './Papers.tsx';
import styles from './Register.module.css';
import { SHEETS } from './sheetNames.ts';

export interface RegisterProps {
  readonly job: Job;
  readonly findings: readonly Finding[];
  readonly current: SheetNo | undefined;
  readonly keeping: Keeping;
  readonly undo: string | undefined;
  /** On a phone the register is a sheet of its own. */
  readonly open: boolean;
  readonly onUndo: () => void;
  readonly onKeepMine: () => void;
  readonly onTakeTheirs: () => void;
  readonly onSaveNow: () => void;
  readonly onKeys: () => void;
}

/** The register of sheets: where one is, what fails and asks on each, where the work is kept. */
export function Register(props: RegisterProps) {
  const { job, findings, current, keeping, undo, open, onUndo, onKeepMine, onTakeTheirs, onSaveNow, onKeys } = props;
  const [first, second] = jobLines(job);
  return (
    <nav className={styles.register} aria-label="Sheets" data-open={open || undefined}>
      <House inBook={false} />
      <div className={styles.job}>
        <b>{job.name}</b>
        <span>{first}</span>
        <span>{second}</span>
      </div>
      <ol className={styles.rows}>
        {SHEETS.map(({ no, name }) => (
          <li key={no}>
            <Link
              to="/job/$id/$sheet"
              params={{ id: job.id, sheet: no }}
              aria-current={no === current ? 'page' : undefined}
            >
              <span className={styles.no}>{no}</span>
              <span className={styles.name}>{name}</span>
              <TallyMarks tally={tallyOn(no, findings)} />
            </Link>
          </li>
        ))}
      </ol>
      <div className={styles.foot}>
        <div className={styles.keeping} data-state={keeping.kind} role="status">
          {keepingWords(keeping)}{' '}
          {keeping.kind === 'waiting' && (
            <button type="button" onClick={onSaveNow}>
              Try again now
            </button>
          )}
          {keeping.kind === 'two versions' && (
            <>
              <button type="button" onClick={onKeepMine}>
                Keep mine
              </button>
              <button type="button" onClick={onTakeTheirs}>
                Take theirs
              </button>
            </>
          )}
          {undo !== undefined && (
            <div>
              <button type="button" onClick={onUndo}>
                Undo: {undo}
              </button>
            </div>
          )}
        </div>
        <Papers onKeys={onKeys} />
      </div>
    </nav>
  );
}

/** Sheet 08 counts all findings, any other those beside its own things. */
function tallyOn(no: SheetNo, findings: readonly Finding[]): Tally {
  return tallyOf(no === '08' ? findings : findings.filter(({ sheet }) => sheet === no));
}
