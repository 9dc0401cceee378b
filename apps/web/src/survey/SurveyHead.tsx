import phone from '../frame/Phone.module.css';
import styles from './Survey.module.css';

export interface SurveyHeadProps {
  readonly title: string;
  readonly aside: string;
  readonly onBack: () => void;
  readonly onUndo: (() => void) | undefined;
}

/** Head of the phone frame in the survey: the way back, the place, the step back, what is open. */
export function SurveyHead({ title, aside, onBack, onUndo }: SurveyHeadProps) {
  return (
    <header className={phone.head}>
      <button type="button" className={phone.back} aria-label="Back" onClick={onBack}>
        <svg width="26" height="26" viewBox="0 0 26 26" aria-hidden="true">
          <path d="M17 4 8 13l9 9" fill="none" stroke="var(--ink)" strokeWidth="3" />
        </svg>
      </button>
      <b>{title}</b>
      <span className={styles.headAside}>
        {onUndo !== undefined && (
          <button type="button" onClick={onUndo}>
            Undo
          </button>
        )}
        <span>{aside}</span>
      </span>
    </header>
  );
}
