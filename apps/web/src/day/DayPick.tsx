import styles from './DayPick.module.css';

export interface DayPickProps {
  readonly days: number;
  readonly on: number;
  readonly onPick: (day: number) => void;
}

/** Which day of the job is looked at, where only one has room. */
export function DayPick({ days, on, onPick }: DayPickProps) {
  return (
    <fieldset className={styles.days} aria-label="Day of the job">
      {Array.from({ length: days }, (_, i) => i + 1).map((day) => (
        <button key={day} type="button" aria-pressed={day === on} onClick={() => onPick(day)}>
          Day {day}
        </button>
      ))}
    </fieldset>
  );
}
