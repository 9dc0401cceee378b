import { useId } from 'react';
import styles from './Field.module.css';
import { Mark } from './Mark.tsx';
import { TypedField } from './TypedField.tsx';

export interface PersonFieldProps {
  readonly label: string;
  readonly value: string;
  readonly people: readonly string[];
  readonly onPick: (name: string) => void;
  readonly refusal?: string | undefined;
}

/** One of the crew; where nobody is named yet, a name that is typed. */
export function PersonField({ label, value, people, onPick, refusal }: PersonFieldProps) {
  const id = useId();
  if (people.length === 0)
    return <TypedField label={label} value={value} onType={onPick} placeholder="name" refusal={refusal} />;
  return (
    <div className={styles.field} data-refused={refusal === undefined ? undefined : true}>
      <label htmlFor={id}>{label}</label>
      <span className={styles.line}>
        <select id={id} value={people.includes(value) ? value : ''} onChange={(event) => onPick(event.target.value)}>
          <option value="">pick one of the crew</option>
          {people.map((name) => (
            <option key={name} value={name}>
              {name}
            </option>
          ))}
        </select>
        <svg width="10" height="10" viewBox="0 0 10 10" aria-hidden="true">
          <path className="pen35" d="M1 3l4 4 4-4" />
        </svg>
      </span>
      <span className={styles.said} aria-live="polite">
        {refusal !== undefined && (
          <span data-state="fails">
            <Mark state="fails" size={15} /> {refusal}
          </span>
        )}
      </span>
    </div>
  );
}
