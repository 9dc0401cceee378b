import { useId } from 'react';
import styles from './Field.module.css';
import { Mark } from './Mark.tsx';

export interface TypedFieldProps {
  readonly label: string;
  readonly value: string;
  readonly onType: (text: string) => void;
  readonly unit?: string;
  readonly placeholder?: string;
  readonly inputMode?: 'text' | 'decimal';
  readonly type?: 'text' | 'date';
  /** Words offered while typing; others may be typed. */
  readonly offered?: readonly string[];
  readonly refusal?: string | undefined;
  readonly onEnter?: () => void;
}

/** A field of something that is not in the job yet: typed first, kept by an act beside it. */
export function TypedField({
  label,
  value,
  onType,
  unit,
  placeholder,
  inputMode = 'text',
  type = 'text',
  offered,
  refusal,
  onEnter,
}: TypedFieldProps) {
  const id = useId();
  return (
    <div className={styles.field} data-refused={refusal === undefined ? undefined : true}>
      <label htmlFor={id}>{label}</label>
      <span className={styles.line}>
        <input
          id={id}
          type={type}
          inputMode={inputMode}
          autoComplete="off"
          value={value}
          placeholder={placeholder}
          list={offered === undefined ? undefined : `${id}-offered`}
          aria-invalid={refusal !== undefined}
          aria-describedby={`${id}-said`}
          onChange={(event) => onType(event.target.value)}
          onKeyDown={(event) => {
            if (event.key === 'Enter') onEnter?.();
          }}
        />
        {unit !== undefined && <span className={styles.unit}>{unit}</span>}
      </span>
      {offered !== undefined && (
        <datalist id={`${id}-offered`}>
          {offered.map((each) => (
            <option key={each} value={each} />
          ))}
        </datalist>
      )}
      <span id={`${id}-said`} className={styles.said} aria-live="polite">
        {refusal !== undefined && (
          <span data-state="fails">
            <Mark state="fails" size={15} /> {refusal}
          </span>
        )}
      </span>
    </div>
  );
}
