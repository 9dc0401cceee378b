import { Link } from '@tanstack/react-router';
import styles from './Phone.module.css';

export interface PhoneHeadProps {
  readonly title: string;
  readonly aside: string;
  /** Where the way back leads; undefined in the Book, which is the outermost. */
  readonly backTo?: { readonly to: '/' } | { readonly to: '/job/$id'; readonly id: string };
  /** The step that can be taken back here, by its meaning. It stands in the place of `aside`. */
  readonly undo?: { readonly what: string; readonly onPress: () => void } | undefined;
}

/** Head of the phone frame: the way back, the sheet in large letters, the job. */
export function PhoneHead({ title, aside, backTo, undo }: PhoneHeadProps) {
  const arrow = (
    <svg width="26" height="26" viewBox="0 0 26 26" aria-hidden="true">
      <path d="M17 4 8 13l9 9" fill="none" stroke="var(--ink)" strokeWidth="3" />
    </svg>
  );
  return (
    <header className={styles.head}>
      {backTo?.to === '/' && (
        <Link className={styles.back} to="/" aria-label="Back to the Book">
          {arrow}
        </Link>
      )}
      {backTo?.to === '/job/$id' && (
        <Link className={styles.back} to="/job/$id" params={{ id: backTo.id }} aria-label="Back to the sheets">
          {arrow}
        </Link>
      )}
      {backTo === undefined && (
        <span className={styles.back}>
          <svg width="26" height="26" viewBox="0 0 26 26" aria-hidden="true">
            <path d="M1.5 20.5 24.5 6" fill="none" stroke="var(--ink)" strokeWidth="3.4" />
            <path d="M9 16v9M1 25h15" fill="none" stroke="var(--ink)" strokeWidth="1.3" />
          </svg>
        </span>
      )}
      <b>{title}</b>
      {undo === undefined ? (
        <span className={styles.aside}>{aside}</span>
      ) : (
        <button type="button" className={styles.undo} aria-label={`Undo: ${undo.what}`} onClick={undo.onPress}>
          Undo
        </button>
      )}
    </header>
  );
}
