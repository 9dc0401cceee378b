import type { MissingFact } from '@eaveline/plan';
import { Mark } from '../parts/Mark.tsx';
import { counted } from '../words/count.ts';
import styles from './MissingFacts.module.css';

export interface MissingFactsProps {
  readonly missing: readonly MissingFact[];
}

/** What somebody has to find out, from whom, and how much waits for it. */
export function MissingFacts({ missing }: MissingFactsProps) {
  return (
    <ul className={styles.list}>
      {missing.map(({ at, what, rules, from }) => (
        <li key={at}>
          <Mark state="ask" size={16} />
          <b>{what}</b>
          <span className="quiet small">{from}</span>
          <span className="small num">
            {rules.length === 0 ? '' : `${counted(rules.length, 'check')} ${rules.length === 1 ? 'waits' : 'wait'}`}
          </span>
        </li>
      ))}
    </ul>
  );
}
