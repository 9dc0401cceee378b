import { type Finding, type SheetNo, type Tally, tally as tallyOf } from '@eaveline/plan';
import { Link } from '@tanstack/react-router';
import { useDesk } from '../desk/DeskContext.tsx';
import { planFor } from '../desk/sheetStages.ts';
import { TallyMarks } from '../parts/TallyMarks.tsx';
import { SurveyEntry } from '../survey/SurveyEntry.tsx';
import { House } from './House.tsx';
import { jobLines } from './jobLines.ts';
import { KeepingFoot, type KeepingFootProps } from './KeepingFoot.tsx';
import { Papers } from './Papers.tsx';
import styles from './Register.module.css';
import { SHEETS } from './sheetNames.ts';
import { WhoIsHere } from './WhoIsHere.tsx';

export interface RegisterProps extends KeepingFootProps {
  readonly current: SheetNo | undefined;
  /** On a phone the register is a sheet of its own. */
  readonly open: boolean;
  readonly onKeys: () => void;
}

/** The register of sheets: where one is, what fails and asks on each, who is here, where the work is kept. */
export function Register({ current, open, onKeys, ...steps }: RegisterProps) {
  const { open: opened } = useDesk();
  const { job } = opened;
  const findings = planFor('08', opened)?.checks.findings ?? [];
  const [first, second] = jobLines(job);
  return (
    <nav className={styles.register} aria-label="Sheets" data-open={open || undefined}>
      <House inBook={false} />
      <div className={styles.job}>
        <b>{job.name}</b>
        <span>{first}</span>
        <span>{second}</span>
      </div>
      {open && job.state === 'survey' && <SurveyEntry job={job} />}
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
        <WhoIsHere job={job} changed={opened.undo !== undefined} />
        <KeepingFoot {...steps} />
        <Papers onKeys={onKeys} />
      </div>
    </nav>
  );
}

/** Sheet 08 counts all findings, any other those beside its own things. */
function tallyOn(no: SheetNo, findings: readonly Finding[]): Tally {
  return tallyOf(no === '08' ? findings : findings.filter(({ sheet }) => sheet === no));
}
