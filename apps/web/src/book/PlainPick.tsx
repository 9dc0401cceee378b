import { useId } from 'react';
import styles from '../parts/Field.module.css';

export interface PlainPickProps {
  readonly label: string;
  readonly value: string;
  readonly options: readonly { readonly value: string; readonly words: string }[];
  readonly onPick: (value: string) => void;
}

/** One of a few, for something that is not in a job yet. */
export function PlainPick({ label, value, options, onPick }: PlainPickProps) {
  const id = useId();
  return (
    <div className={styles.field}>
      <label htmlFor={id}>{label}</label>
      <span className={styles.line}>
        <select id={id} value={value} onChange={(event) => onPick(event.target.value)}>
          {options.map((option) => (
            <option key={option.value} value={option.value}>
              {option.words}
            </option>
          ))}
        </select>
        <svg width="10" height="10" viewBox="0 0 10 10" aria-hidden="true">
          <path className="pen35" d="M1 3l4 4 4-4" />
        </svg>
      </span>
    </div>
  );
}
