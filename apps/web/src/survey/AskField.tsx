import type { Asked } from '@eaveline/job';
import { useId } from 'react';
import { Mark } from '../parts/Mark.tsx';
import styles from './Ask.module.css';
import { AskMore } from './AskMore.tsx';
import { ConductorAsk } from './ConductorAsk.tsx';
import { LinesAsk } from './LinesAsk.tsx';
import { NumberAsk } from './NumberAsk.tsx';
import { PickAsk } from './PickAsk.tsx';
import { TextAsk } from './TextAsk.tsx';
import { useAnswer } from './useAnswer.ts';

export interface AskFieldProps {
  readonly asked: Asked;
  /** What needs it, a sentence; undefined where it keeps nothing open. */
  readonly needed: string | undefined;
  /** Called when the question is looked at: the pad says what it is for. */
  readonly onLook: () => void;
}

/** One question: what is asked, how it is measured, the answer, who found it when and with what. */
export function AskField({ asked, needed, onLook }: AskFieldProps) {
  const on = useAnswer(asked);
  const id = useId();
  const control = { asked, on, id };
  const { answer } = asked;
  const brought = answer.kind === 'brought';
  const single = answer.kind === 'number' || answer.kind === 'text' || answer.kind === 'date';
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: nothing is pressed here; the pad follows the question in hand
    <div className={styles.ask} onFocus={onLook} data-open={needed === undefined ? undefined : true}>
      {single ? <label htmlFor={id}>{asked.ask}</label> : <p id={`${id}-ask`}>{asked.ask}</p>}
      {asked.how !== undefined && (
        <p className={styles.how} id={`${id}-how`}>
          {asked.how}
        </p>
      )}
      {answer.kind === 'number' && <NumberAsk {...control} unit={answer.unit} />}
      {(answer.kind === 'text' || answer.kind === 'date') && <TextAsk {...control} type={answer.kind} />}
      {(answer.kind === 'pick' || answer.kind === 'yes-no' || answer.kind === 'plane') && <PickAsk {...control} />}
      {answer.kind === 'conductor' && <ConductorAsk {...control} />}
      {answer.kind === 'lines' && <LinesAsk {...control} />}
      {on.refusal !== undefined && (
        <p className={styles.said} data-state="fails" role="alert">
          <Mark state="fails" size={15} /> {on.refusal}
        </p>
      )}
      {on.refusal === undefined && needed !== undefined && (
        <p className={styles.said} data-state="ask">
          <Mark state="ask" size={15} /> {needed}
        </p>
      )}
      {asked.later !== undefined && on.value === undefined && (
        <p className={styles.said}>Comes later: {asked.later} brings it.</p>
      )}
      {!brought && <AskMore asked={asked} on={on} />}
    </div>
  );
}
