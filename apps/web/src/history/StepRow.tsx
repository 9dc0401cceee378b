import type { HistoryStep } from '../job/history.ts';
import styles from './History.module.css';
import { when } from './when.ts';

export interface StepRowProps {
  readonly step: HistoryStep;
  readonly selected: boolean;
  readonly newest: boolean;
  readonly onSelect: () => void;
}

/** A step of the history: when, who, what. */
export function StepRow({ step, selected, newest, onSelect }: StepRowProps) {
  return (
    <li className={styles.row} data-selected={selected || undefined}>
      <button type="button" aria-pressed={selected} onClick={onSelect}>
        <span className={styles.when}>{when(step.at, new Date())}</span>
        <span className={styles.who}>
          {step.who === '' ? (step.kind === 'begun' ? '' : 'no name given') : step.who}
        </span>
        <span className={styles.what}>
          {step.what}
          {newest && <small> · as it stands now</small>}
        </span>
      </button>
    </li>
  );
}
