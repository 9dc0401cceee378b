import { showQuantity } from '@eaveline/job';
import { useEffect, useRef, useState } from 'react';
import { flushSync } from 'react-dom';
import { OverKeyboard } from '../frame/OverKeyboard.tsx';
import { typedQuantity } from './typedQuantity.ts';
import { UnitKeys } from './UnitKeys.tsx';
import { unitsOffered } from './unitsOffered.ts';
import { useCoarse } from './useCoarse.ts';
import type { Draft } from './useDraft.ts';

export interface QuantityInputProps {
  readonly id: string;
  readonly unit: string;
  readonly optional: boolean;
  readonly draft: Draft;
  /** What the job keeps, as text. */
  readonly shown: string;
  readonly placeholder: string;
  readonly refused: boolean;
  readonly describedBy: string;
}

/**
 * The line a quantity is typed on. Enter takes it, Escape puts it back, leaving it takes it. Where keys are drawn on
 * the glass they are digits, with the field's units and the two answers above them.
 */
export function QuantityInput(props: QuantityInputProps) {
  const { id, unit, optional, draft, shown, placeholder, refused, describedBy } = props;
  const field = useRef<HTMLInputElement>(null);
  const turning = useRef(false);
  const [inHand, setInHand] = useState(false);
  const [letters, setLetters] = useState(false);
  const coarse = useCoarse();
  const text = draft.text ?? shown;
  const units = unitsOffered(unit).length > 0;
  const typing = draft.text !== undefined;
  const { take } = draft;

  // a phone may press a button elsewhere and leave the focus here: what the button does has to find the figure taken
  useEffect(() => {
    if (!typing) return;
    const pressed = ({ target }: MouseEvent) => {
      const within = target instanceof Element && target.closest('[data-over-keyboard]') !== null;
      if (target !== field.current && !within) flushSync(take);
    };
    document.addEventListener('click', pressed, { capture: true });
    return () => document.removeEventListener('click', pressed, { capture: true });
  }, [typing, take]);

  /** The keys on the glass change when the field is entered anew; it is not left meanwhile. */
  function turnKeys() {
    turning.current = true;
    flushSync(() => setLetters(!letters));
    field.current?.blur();
    field.current?.focus();
    turning.current = false;
  }

  /** An answer given by hand folds the keys on the glass away: the sheet is seen again. */
  function answer(give: () => void) {
    flushSync(give);
    if (coarse) field.current?.blur();
  }

  return (
    <>
      <input
        ref={field}
        id={id}
        inputMode={letters ? 'text' : unit === '' ? 'numeric' : 'decimal'}
        enterKeyHint="done"
        autoComplete="off"
        autoCapitalize="off"
        spellCheck={false}
        value={text}
        placeholder={placeholder}
        aria-invalid={refused}
        aria-describedby={describedBy}
        onChange={(event) => draft.type(event.target.value)}
        onFocus={() => setInHand(true)}
        onBlur={() => {
          if (turning.current) return;
          setInHand(false);
          setLetters(false);
          draft.take();
        }}
        onKeyDown={(event) => {
          if (event.nativeEvent.isComposing) return;
          if (event.key === 'Enter') answer(draft.take);
          if (event.key === 'Escape') draft.putBack();
        }}
      />
      {coarse && inHand && (units || typing) && (
        <OverKeyboard>
          <UnitKeys
            unit={unit}
            text={text}
            letters={letters}
            onText={draft.type}
            onLetters={turnKeys}
            {...(!typing
              ? {}
              : {
                  answers: {
                    take: takeWords(text, unit, optional),
                    onTake: () => answer(draft.take),
                    onPutBack: () => answer(draft.putBack),
                  },
                })}
          />
        </OverKeyboard>
      )}
    </>
  );
}

/** `Take 3.6576 m`: what the press would put into the job. */
function takeWords(text: string, unit: string, optional: boolean): string {
  const read = typedQuantity(text, unit, optional);
  if (read.kind === 'refused') return 'Take';
  return read.value === undefined ? 'Leave it empty' : `Take ${showQuantity(read.value, unit)}`;
}
