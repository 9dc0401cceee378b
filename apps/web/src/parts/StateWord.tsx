import type { Finding } from '@eaveline/plan';
import { Mark } from './Mark.tsx';
import styles from './StateWord.module.css';

export interface StateWordProps {
  readonly state: Finding['state'];
  readonly unconfirmed?: boolean;
}

const WORDS = { meets: 'Meets', fails: 'Fails', ask: 'Ask' } as const;

/** Mark, word and colour of a state, never one without the others. */
export function StateWord({ state, unconfirmed = false }: StateWordProps) {
  return (
    <span className={styles.state} data-state={state}>
      <Mark state={state} size={16} />
      <span>
        {WORDS[state]}
        {unconfirmed && <span className={styles.aside}>, limit unconfirmed</span>}
      </span>
    </span>
  );
}
