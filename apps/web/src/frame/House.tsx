import { Link } from '@tanstack/react-router';
import styles from './House.module.css';

export interface HouseProps {
  readonly inBook: boolean;
}

/** The sign and the name, and the way to the Book. */
export function House({ inBook }: HouseProps) {
  return (
    <div className={styles.house}>
      <svg width="26" height="26" viewBox="0 0 26 26" aria-hidden="true">
        <path d="M1.5 20.5 24.5 6" fill="none" stroke="var(--ink)" strokeWidth="3.4" />
        <path d="M9 16v9M1 25h15" fill="none" stroke="var(--ink)" strokeWidth="1.3" />
      </svg>
      <b>Eaveline</b>
      {!inBook && <Link to="/">The Book</Link>}
    </div>
  );
}
