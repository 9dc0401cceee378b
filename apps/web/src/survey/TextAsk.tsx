import styles from './Ask.module.css';
import type { AskControlProps } from './askControl.ts';

export interface TextAskProps extends AskControlProps {
  readonly type: 'text' | 'date';
}

/** Words as they stand on the thing, or a date. */
export function TextAsk({ on, id, type }: TextAskProps) {
  return (
    <span className={styles.line} data-refused={on.refusal === undefined ? undefined : true}>
      <input
        id={id}
        type={type}
        autoComplete="off"
        value={typeof on.value === 'string' ? on.value : ''}
        aria-invalid={on.refusal !== undefined}
        aria-describedby={`${id}-how`}
        onChange={(event) => {
          const typed = event.target.value;
          on.answer(typed === '' ? undefined : typed);
        }}
      />
    </span>
  );
}
