import type { SyntheticEvent } from 'react';
import styles from './UnitKeys.module.css';
import { goesBelowNought, unitsOffered, withMinusTurned, withUnitTyped } from './unitsOffered.ts';

export interface UnitKeysProps {
  /** Unit of the field. */
  readonly unit: string;
  /** What stands in the field. */
  readonly text: string;
  /** True where letters are typed, not digits. */
  readonly letters: boolean;
  readonly onText: (text: string) => void;
  readonly onLetters: () => void;
  /** The two answers, once something is typed. */
  readonly answers?: {
    /** `Take 3.6576 m`. */
    readonly take: string;
    readonly onTake: () => void;
    readonly onPutBack: () => void;
  };
}

/** The field keeps the focus, and with it the keys on the glass. */
const keepFocus = (event: SyntheticEvent) => event.preventDefault();

/** Over the digits of a phone: the units of a field, its minus, the way to the letters, and the two answers. */
export function UnitKeys({ unit, text, letters, onText, onLetters, answers }: UnitKeysProps) {
  const units = unitsOffered(unit);
  return (
    <fieldset className={styles.keys} onMouseDown={keepFocus} aria-label="Keys of this field">
      {units.length > 0 && (
        <div className={styles.units}>
          {goesBelowNought(unit) && (
            <button type="button" aria-label="minus" onClick={() => onText(withMinusTurned(text))}>
              {'\u2212'}
            </button>
          )}
          {units.map((each) => (
            <button key={each} type="button" onClick={() => onText(withUnitTyped(text, each, unit))}>
              {each}
            </button>
          ))}
          <button type="button" aria-label={letters ? 'digits' : 'letters'} onClick={onLetters}>
            {letters ? '123' : 'abc'}
          </button>
        </div>
      )}
      {answers !== undefined && (
        <div className={styles.answers}>
          <button type="button" onClick={answers.onPutBack}>
            Put back
          </button>
          <button type="button" className={styles.take} onClick={answers.onTake}>
            {answers.take}
          </button>
        </div>
      )}
    </fieldset>
  );
}
