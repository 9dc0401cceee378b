import { quantityRefusalWords, readQuantity } from '@eaveline/job';
import { useState } from 'react';
import { figure } from '../words/figure.ts';
import styles from './Ask.module.css';
import type { AskControlProps } from './askControl.ts';

export interface NumberAskProps extends AskControlProps {
  readonly unit: string;
}

/** A reading as typed at the meter, in any unit of its kind: taken while it is typed, refused once it is left. */
export function NumberAsk({ on, id, unit }: NumberAskProps) {
  const [text, setText] = useState<string>();
  // a year and a count are no quantities: their digits stand together
  const kept = typeof on.value !== 'number' ? '' : unit === '' ? String(on.value) : shown(on.value);

  function type(typed: string) {
    setText(typed);
    const read = readQuantity(typed, unit);
    if (read.kind === 'refused') return on.say(undefined); // half a word is no mistake yet
    if (read.kind === 'empty') return void on.answer(undefined);
    on.answer(read.value);
  }
  function leave() {
    if (text === undefined) return;
    const read = readQuantity(text, unit);
    if (read.kind === 'refused')
      return on.say(`${quantityRefusalWords(read)} Kept is ${kept === '' ? 'nothing' : `${kept} ${unit}`}.`);
    if (on.refusal === undefined) setText(undefined);
  }
  return (
    <span className={styles.line} data-refused={on.refusal === undefined ? undefined : true}>
      <input
        id={id}
        inputMode={unit === '' ? 'numeric' : 'text'}
        autoComplete="off"
        autoCapitalize="off"
        enterKeyHint="next"
        value={text ?? kept}
        placeholder={on.standing === 'not measured' ? 'not measured' : 'not read'}
        aria-invalid={on.refusal !== undefined}
        aria-describedby={`${id}-how`}
        onChange={(event) => type(event.target.value)}
        onBlur={leave}
        onKeyDown={(event) => {
          if (event.key === 'Enter') event.currentTarget.blur();
          if (event.key === 'Escape') {
            setText(undefined);
            on.say(undefined);
          }
        }}
      />
      <span className={styles.unit}>{unit}</span>
    </span>
  );
}

/** As many figures as were measured, and none made up. */
function shown(value: number): string {
  const text = String(Number(Math.abs(value).toPrecision(10)));
  return figure(value, text.split('.')[1]?.length ?? 0);
}
