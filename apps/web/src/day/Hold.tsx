import styles from './Hold.module.css';

export interface HoldProps {
  /** `H3 look in the attic, torque on one in ten`. */
  readonly words: string;
}

/** A hold point as it stands on a drawing: a heavy and a light rule, and nobody passes until it is signed. */
export function Hold({ words }: HoldProps) {
  const [, name, what = words] = /^(H\d+) (.*)$/.exec(words) ?? [];
  return (
    <div className={styles.hold}>
      <b>Hold{name === undefined ? '' : ` ${name.slice(1)}`}</b>
      <span>
        <b>Nobody goes on</b> until: {what}.
      </span>
    </div>
  );
}
