import { useEffect } from 'react';
import { QuantityInput } from '../parts/QuantityInput.tsx';
import { typedQuantity } from '../parts/typedQuantity.ts';
import { useDraft } from '../parts/useDraft.ts';
import { figure } from '../words/figure.ts';
import styles from './Ask.module.css';
import type { AskControlProps } from './askControl.ts';

export interface NumberAskProps extends AskControlProps {
  readonly unit: string;
}

/** A reading as typed at the meter, in any unit of its kind: a draft until it is left or taken, and then kept or refused. */
export function NumberAsk({ asked, on, id, unit }: NumberAskProps) {
  // a year and a count are no quantities: their digits stand together
  const kept = typeof on.value !== 'number' ? '' : unit === '' ? String(on.value) : shownFigures(on.value);
  const draft = useDraft({
    place: asked.path,
    take(text) {
      const read = typedQuantity(text, unit, true);
      if (read.kind === 'refused') {
        on.say(`${read.words} Kept is ${kept === '' ? 'nothing' : `${kept} ${unit}`}.`);
        return false;
      }
      if (text === kept) {
        on.say(undefined);
        return true;
      }
      return on.answer(read.value);
    },
  });
  const read = draft.text === undefined ? undefined : typedQuantity(draft.text, unit, true);
  // it may be taken while another field is typed in: once somebody is named
  const { putBack } = draft;
  const taken = read?.kind === 'reads' && read.value !== undefined && read.value === on.value;
  useEffect(() => {
    if (taken) putBack();
  }, [taken, putBack]);
  return (
    <>
      <span className={styles.line} data-refused={on.refusal === undefined ? undefined : true}>
        <QuantityInput
          id={id}
          unit={unit}
          optional
          draft={{
            ...draft,
            type(text) {
              on.say(undefined); // half a word is no mistake yet
              draft.type(text);
            },
            putBack() {
              on.say(undefined);
              draft.putBack();
            },
          }}
          shown={kept}
          placeholder={on.standing === 'not measured' ? 'not measured' : 'not read'}
          refused={on.refusal !== undefined}
          describedBy={`${id}-how`}
        />
        <span className={styles.unit}>{unit}</span>
      </span>
      {on.refusal === undefined && read?.words !== undefined && <p className={styles.said}>{read.words}</p>}
    </>
  );
}

/** As many figures as were measured, and none made up. */
function shownFigures(value: number): string {
  const text = String(Number(Math.abs(value).toPrecision(10)));
  return figure(value, text.split('.')[1]?.length ?? 0);
}
