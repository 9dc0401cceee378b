import { Link } from '@tanstack/react-router';
import type { ReactNode } from 'react';
import styles from './Plainly.module.css';

export interface PlainlyProps {
  readonly sentence: string;
  readonly lines: readonly string[];
  /** What can be done about it. */
  readonly children?: ReactNode;
}

/** Where there is nothing to draw: one sentence, what there is to know, the way out and the way back. */
export function Plainly({ sentence, lines, children }: PlainlyProps) {
  return (
    <main className={styles.plainly}>
      <h1>{sentence}</h1>
      {lines.map((line) => (
        <p key={line}>{line}</p>
      ))}
      {children}
      <p>
        <Link to="/">To the Book</Link>
      </p>
    </main>
  );
}
