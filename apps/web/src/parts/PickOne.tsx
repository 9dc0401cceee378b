import { type ReactNode, useId } from 'react';
import styles from './PickOne.module.css';

export interface PickOneProps<V extends string> {
  readonly label: string;
  readonly options: readonly { readonly value: V; readonly words: ReactNode }[];
  readonly value: V;
  readonly onPick: (value: V) => void;
}

/** One of a few that stand side by side: Tab reaches it, arrows walk it. */
export function PickOne<V extends string>({ label, options, value, onPick }: PickOneProps<V>) {
  const name = useId();
  return (
    <fieldset className={styles.pick}>
      <legend className="out-of-sight">{label}</legend>
      {options.map((option) => (
        <label key={option.value} data-picked={option.value === value || undefined}>
          <input
            type="radio"
            name={name}
            value={option.value}
            checked={option.value === value}
            onChange={() => onPick(option.value)}
          />
          <span>{option.words}</span>
        </label>
      ))}
    </fieldset>
  );
}
