import type { Finding } from '@eaveline/plan';
import { Link } from '@tanstack/react-router';
import { Mark } from '../parts/Mark.tsx';
import styles from './HandoverSheet.module.css';

export interface OpenFindingsProps {
  readonly findings: readonly Finding[];
  readonly jobId: string;
}

/** Every check that fails or asks, each leading to its place on sheet 08. */
export function OpenFindings({ findings, jobId }: OpenFindingsProps) {
  const open = findings.filter(({ state }) => state !== 'meets');
  if (open.length === 0) return null;
  return (
    <details className={styles.each}>
      <summary>Each check that is open, {open.length}</summary>
      <ul>
        {open.map(({ id, title, state }) => (
          <li key={id}>
            <Mark state={state} size={15} />
            <span className="out-of-sight">{state}: </span>
            <Link to="/job/$id/$sheet" params={{ id: jobId, sheet: '08' }} search={{ at: id }}>
              {title}
            </Link>
          </li>
        ))}
      </ul>
    </details>
  );
}
