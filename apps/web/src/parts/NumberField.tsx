import { quantityRefusalWords, readQuantity } from '@eaveline/job';
import { useId, useState } from 'react';
import { useJob } from '../job/JobContext.tsx';
import { valueAt } from '../job/path.ts';
import { countWord, sentence } from '../words/count.ts';
import styles from './Field.module.css';
import { Mark } from './Mark.tsx';

export interface NumberFieldProps {
  readonly label: string;
  /** Where it stands in the job. */
  readonly path: readonly string[];
  readonly unit: string;
  /** Checks that wait while it is not known. */
  readonly waiting?: number;
  /** May be left out of the job. */
  readonly optional?: boolean;
  readonly note?: string;
  /** Shown and typed in another unit than kept: typed = kept × times. */
  readonly times?: number;
}

/**
 * A number of the job, typed in place in its own unit or with another behind it: taken while typing, or refused with
 * the way out beside it.
 */
export function NumberField({ label, path, unit, waiting, optional = false, note, times = 1 }: NumberFieldProps) {
  const { job, edit } = useJob();
  const id = useId();
  const [typing, setTyping] = useState<{ readonly text: string; readonly refusal: string | undefined }>();
  const kept = valueAt(job, path);
  const shown = typeof kept === 'number' ? String(Number((kept * times).toPrecision(10))).replace('-', '\u2212') : '';

  function take(text: string) {
    const read = readQuantity(text, unit);
    if (read.kind === 'refused') return setTyping({ text, refusal: quantityRefusalWords(read) });
    if (read.kind === 'empty' && !optional) return setTyping({ text, refusal: 'It cannot be left empty.' });
    const value = read.kind === 'value' ? read.value / times : undefined;
    const refusal = edit([{ path, value }], label);
    setTyping({ text, refusal });
  }

  const refusal = typing?.refusal;
  const asks = kept === undefined && refusal === undefined && waiting !== undefined && waiting > 0;
  const said = `${id}-said`;
  return (
    <div className={styles.field} data-refused={refusal === undefined ? undefined : true}>
      <label htmlFor={id}>{label}</label>
      <span className={styles.line}>
        <input
          id={id}
          inputMode="decimal"
          autoComplete="off"
          value={typing?.text ?? shown}
          placeholder="not measured"
          aria-invalid={refusal !== undefined}
          aria-describedby={said}
          onChange={(event) => take(event.target.value)}
          onBlur={() => {
            if (typing?.refusal === undefined) setTyping(undefined);
          }}
          onKeyDown={(event) => {
            if (event.key === 'Escape') setTyping(undefined);
          }}
        />
        <span className={styles.unit}>{unit}</span>
      </span>
      <span id={said} className={styles.said} aria-live="polite">
        {refusal !== undefined && (
          <span data-state="fails">
            <Mark state="fails" size={15} /> {refusal} The job keeps {shown === '' ? 'none' : `${shown} ${unit}`}.
          </span>
        )}
        {asks && (
          <span data-state="ask">
            <Mark state="ask" size={15} /> {sentence(countWord(waiting))}{' '}
            {waiting === 1 ? 'check waits' : 'checks wait'} for it.
          </span>
        )}
        {refusal === undefined && !asks && note}
      </span>
    </div>
  );
}
