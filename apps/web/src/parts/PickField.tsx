import { useId, useState } from 'react';
import { useJob } from '../job/JobContext.tsx';
import { valueAt } from '../job/path.ts';
import styles from './Field.module.css';
import { Mark } from './Mark.tsx';

export interface PickFieldProps {
  readonly label: string;
  readonly path: readonly string[];
  readonly options: readonly { readonly value: string | number; readonly words: string }[];
  /** What an empty field means; where given, the field may be left out of the job. */
  readonly none?: string;
}

/** One of a few, picked in place. */
export function PickField({ label, path, options, none }: PickFieldProps) {
  const { job, edit } = useJob();
  const id = useId();
  const [refusal, setRefusal] = useState<string>();
  const kept = valueAt(job, path);
  const at = options.findIndex(({ value }) => value === kept);
  return (
    <div className={styles.field} data-refused={refusal === undefined ? undefined : true}>
      <label htmlFor={id}>{label}</label>
      <span className={styles.line}>
        <select
          id={id}
          value={at}
          onChange={(event) => {
            const picked = options[Number(event.target.value)];
            setRefusal(edit([{ path, value: picked?.value }], label));
          }}
        >
          {(none !== undefined || at < 0) && <option value={-1}>{none ?? String(kept ?? 'pick one')}</option>}
          {options.map(({ words }, i) => (
            <option key={words} value={i}>
              {words}
            </option>
          ))}
        </select>
        <svg width="10" height="10" viewBox="0 0 10 10" aria-hidden="true">
          <path className="pen35" d="M1 3l4 4 4-4" />
        </svg>
      </span>
      {refusal !== undefined && (
        <span className={styles.said} aria-live="polite">
          <span data-state="fails">
            <Mark state="fails" size={15} /> {refusal}
          </span>
        </span>
      )}
    </div>
  );
}
