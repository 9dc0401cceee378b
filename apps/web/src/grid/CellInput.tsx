import { type KeyboardEvent, useId, useLayoutEffect, useRef, useState } from 'react';
import type { PickColumn, TypedColumn } from './column.ts';
import styles from './Grid.module.css';

/** Where to go once a cell is taken. */
export type Leave = 'down' | 'up' | 'right' | 'left' | 'stay' | 'gone';

export interface CellInputProps {
  readonly column: TypedColumn;
  readonly label: string;
  readonly text: string;
  /** `typed`: begun by a letter, which stands in it. `opened`: by Enter or F2. `pressed`: by mouse or finger. */
  readonly how: 'typed' | 'opened' | 'pressed';
  readonly refused: boolean;
  /** Id of the words of the refusal. */
  readonly said: string;
  readonly onTake: (text: string, leave: Leave) => void;
  readonly onPutBack: () => void;
  /** Gives true where the pasted text is a table and was taken as one. */
  readonly onPaste: (text: string) => boolean;
}

/** The field of a cell that is being typed in. */
export function CellInput(props: CellInputProps) {
  const { column, label, how, refused, said, onTake, onPutBack, onPaste } = props;
  const [text, setText] = useState(props.text);
  const field = useRef<HTMLInputElement>(null);
  const left = useRef(false);
  const offered = useId();
  const [typing, setTyping] = useState(column.kind !== 'pick' || how === 'typed');

  useLayoutEffect(() => {
    if (!typing) return;
    field.current?.focus();
    if (how === 'typed' || column.kind === 'pick') field.current?.setSelectionRange(99, 99);
    else field.current?.select();
  }, [how, typing, column.kind]);

  const leave = (to: Leave, value = text) => {
    left.current = to !== 'gone';
    onTake(value, to);
  };
  if (column.kind === 'pick' && !typing)
    return (
      <PickInput
        {...props}
        column={column}
        onLeave={(value, to) => leave(to, value)}
        onTyped={(letter) => {
          setText(letter);
          setTyping(true);
        }}
      />
    );
  return (
    <>
      <input
        ref={field}
        className={styles.input}
        aria-label={label}
        aria-invalid={refused}
        aria-describedby={refused ? said : undefined}
        // units are words: a field of digits alone would not let them be typed
        inputMode={column.kind === 'whole' ? 'numeric' : 'text'}
        enterKeyHint="done"
        autoComplete="off"
        autoCapitalize="off"
        spellCheck={false}
        value={text}
        onChange={(event) => {
          left.current = false;
          setText(event.target.value);
        }}
        onBlur={() => {
          if (!left.current) leave('gone');
        }}
        onKeyDown={(event) => {
          left.current = false;
          keyLeaves(event, (to) => leave(to), onPutBack);
        }}
        onPaste={(event) => {
          if (onPaste(event.clipboardData.getData('text/plain'))) event.preventDefault();
        }}
        list={column.kind === 'pick' ? offered : undefined}
      />
      {column.kind === 'pick' && (
        <datalist id={offered}>
          {column.options.map(({ words }) => (
            <option key={words} value={words} />
          ))}
        </datalist>
      )}
    </>
  );
}

interface PickInputProps extends CellInputProps {
  readonly column: PickColumn;
  readonly onLeave: (text: string, to: Leave) => void;
  /** A letter was typed: from here on it is read as words, not as the first option that begins so. */
  readonly onTyped: (letter: string) => void;
}

/** A choice of a few. By keyboard it is looked through and then taken with Enter; pressed, it is taken at once. */
function PickInput({ column, label, text, how, refused, said, onLeave, onTyped, onPutBack }: PickInputProps) {
  const field = useRef<HTMLSelectElement>(null);
  const [picked, setPicked] = useState(text);
  const pressed = useRef(how === 'pressed');
  const left = useRef(false);
  useLayoutEffect(() => {
    field.current?.focus();
    // opens the list at once where the browser lets a page do so; elsewhere the next press opens it
    if (how === 'pressed' && field.current !== null && 'showPicker' in field.current) {
      try {
        field.current.showPicker();
      } catch {
        field.current.focus();
      }
    }
  }, [how]);
  const leave = (to: Leave, value = picked) => {
    left.current = to !== 'gone';
    onLeave(value, to);
  };
  const shown = column.options.some(({ words }) => words === picked) ? picked : '';
  return (
    <select
      ref={field}
      className={styles.input}
      aria-label={label}
      aria-invalid={refused}
      aria-describedby={refused ? said : undefined}
      value={shown}
      onPointerDown={() => {
        pressed.current = true;
      }}
      onChange={(event) => {
        setPicked(event.target.value);
        if (pressed.current) leave('stay', event.target.value);
      }}
      onBlur={(event) => {
        // into its own list is not away from it
        if (!(left.current || event.currentTarget.contains(event.relatedTarget))) leave('gone');
      }}
      onKeyDown={(event) => {
        const inList = event.target !== event.currentTarget;
        if (!inList) pressed.current = false;
        const { key, ctrlKey, metaKey, altKey } = event;
        if (key.length === 1 && key !== ' ' && !ctrlKey && !metaKey && !altKey) {
          event.preventDefault();
          event.stopPropagation();
          left.current = true;
          onTyped(key);
        } else if (inList) event.stopPropagation();
        else keyLeaves(event, (to) => leave(to), onPutBack);
      }}
    >
      {(column.none !== undefined || shown === '') && <option value="">{column.none ?? 'pick one'}</option>}
      {column.options.map(({ words }) => (
        <option key={words} value={words}>
          {words}
        </option>
      ))}
    </select>
  );
}

/** Enter takes and goes down, Tab to the right, with Shift the other way; Escape puts back. */
function keyLeaves(event: KeyboardEvent, leave: (to: Leave) => void, putBack: () => void): void {
  if (event.nativeEvent.isComposing) return;
  if (event.key === 'Enter') leave(event.shiftKey ? 'up' : 'down');
  else if (event.key === 'Tab') leave(event.shiftKey ? 'left' : 'right');
  else if (event.key === 'Escape') putBack();
  else {
    event.stopPropagation();
    return;
  }
  event.preventDefault();
  event.stopPropagation();
}
