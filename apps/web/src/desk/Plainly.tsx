import { Link } from '@tanstack/react-router';
import styles from './Plainly.module.css';

export interface PlainlyProps {
  readonly sentence: string;
  readonly lines: readonly string[];
}

/** Where there is nothing to draw: one sentence, what there is to know, the way back. */
export function Plainly({ sentence, lines }: PlainlyProps) {
  return (
    <main className={styles.plainly}>
      <h1>{sentence}</h1>
      {lines.map((line) => (
        <p key={line}>{line}</p>
      ))}
      <p>
        <Link to="/">To the Book</Link>
      </p>
    </main>
  );
}
