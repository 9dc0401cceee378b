import { useId } from 'react';
import styles from './Field.module.css';

export interface PickFromProps {
  readonly label: string;
  readonly options: readonly { readonly value: string; readonly words: string }[];
  /** Empty where nothing is picked. */
  readonly value: string;
  /** What nothing picked means: `every sheet`. */
  readonly none: string;
  readonly onPick: (value: string) => void;
}

/** One of many, picked from a list; not a field of the job. */
export function PickFrom({ label, options, value, none, onPick }: PickFromProps) {
  const id = useId();
  return (
    <div className={styles.field}>
      <label htmlFor={id}>{label}</label>
      <span className={styles.line}>
        <select id={id} value={value} onChange={(event) => onPick(event.target.value)}>
          <option value="">{none}</option>
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
