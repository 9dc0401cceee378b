import { useId, useState } from 'react';
import { useJob } from '../job/JobContext.tsx';
import { valueAt } from '../job/path.ts';
import { countWord, sentence } from '../words/count.ts';
import styles from './Field.module.css';
import { Mark } from './Mark.tsx';
import { QuantityInput } from './QuantityInput.tsx';
import { typedQuantity } from './typedQuantity.ts';
import { useDraft } from './useDraft.ts';

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
 * A number of the job, typed in its own unit or with another behind it. What is typed is a draft, read out beside the
 * field; Enter or leaving the field takes it, Escape puts back what the job keeps. A refusal leaves the job as it is.
 */
export function NumberField({ label, path, unit, waiting, optional = false, note, times = 1 }: NumberFieldProps) {
  const { job, edit } = useJob();
  const id = useId();
  const [refusal, setRefusal] = useState<string>();
  const kept = valueAt(job, path);
  const shown = typeof kept === 'number' ? String(Number((kept * times).toPrecision(10))).replace('-', '\u2212') : '';

  const draft = useDraft({
    place: path.join('.'),
    take(text) {
      const read = typedQuantity(text, unit, optional);
      const why =
        read.kind === 'refused'
          ? read.words
          : text === shown
            ? undefined
            : edit([{ path, value: read.value === undefined ? undefined : read.value / times }], label);
      setRefusal(why);
      return why === undefined;
    },
  });

  const asks = kept === undefined && draft.text === undefined && waiting !== undefined && waiting > 0;
  const refused = draft.text !== undefined && refusal !== undefined;
  const keeps = `The job keeps ${shown === '' ? 'none' : `${shown} ${unit}`.trim()}`;
  const said = `${id}-said`;
  return (
    <div className={styles.field} data-refused={refused || undefined}>
      <label htmlFor={id}>{label}</label>
      <span className={styles.line}>
        <QuantityInput
          id={id}
          unit={unit}
          optional={optional}
          draft={{
            ...draft,
            type(text) {
              setRefusal(undefined);
              draft.type(text);
            },
          }}
          shown={shown}
          placeholder="not measured"
          refused={refused}
          describedBy={said}
        />
        <span className={styles.unit}>{unit}</span>
      </span>
      {/* while typing it is not read out at each letter */}
      <span id={said} className={styles.said} aria-live={draft.text === undefined || refused ? 'polite' : 'off'}>
        {refused && (
          <span data-state="fails">
            <Mark state="fails" size={15} /> {refusal} {keeps}.
          </span>
        )}
        {asks && (
          <span data-state="ask">
            <Mark state="ask" size={15} /> {sentence(countWord(waiting))}{' '}
            {waiting === 1 ? 'check waits' : 'checks wait'} for it.
          </span>
        )}
        {!refused && draft.text !== undefined && draft.text !== shown && (
          <DraftSays text={draft.text} unit={unit} optional={optional} keeps={keeps} />
        )}
        {draft.text === undefined && !asks && note}
      </span>
    </div>
  );
}

interface DraftSaysProps {
  readonly text: string;
  readonly unit: string;
  readonly optional: boolean;
  readonly keeps: string;
}

/** What a draft reads as, or why it does not read yet; half a word is no mistake, and has no mark. */
function DraftSays({ text, unit, optional, keeps }: DraftSaysProps) {
  const read = typedQuantity(text, unit, optional);
  const words = read.words === undefined ? '' : `${read.words} `;
  return (
    <>
      {words}
      {read.kind === 'reads' ? `${keeps} until this is taken.` : `${keeps}.`}
    </>
  );
}
