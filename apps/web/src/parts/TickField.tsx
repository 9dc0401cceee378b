import { useState } from 'react';
import { useJob } from '../job/JobContext.tsx';
import { valueAt } from '../job/path.ts';
import styles from './Field.module.css';
import { Mark } from './Mark.tsx';

export interface TickFieldProps {
  readonly label: string;
  readonly path: readonly string[];
  /** What unticking leaves: `false`, or nothing at all. */
  readonly off?: false | undefined;
}

/** Yes or no, ticked in place. */
export function TickField({ label, path, off = false }: TickFieldProps) {
  const { job, edit } = useJob();
  const [refusal, setRefusal] = useState<string>();
  return (
    <span>
      <label className={styles.tick}>
        <input
          type="checkbox"
          checked={valueAt(job, path) === true}
          onChange={(event) => setRefusal(edit([{ path, value: event.target.checked ? true : off }], label))}
        />
        <span>{label}</span>
      </label>
      {refusal !== undefined && (
        <span className={styles.said} aria-live="polite">
          <span data-state="fails">
            <Mark state="fails" size={15} /> {refusal}
          </span>
        </span>
      )}
    </span>
  );
}
