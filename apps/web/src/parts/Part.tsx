import type { ReactNode } from 'react';
import styles from './Part.module.css';

export interface PartProps {
  readonly title: string;
  /** Beside the title, in quiet figures: how many. */
  readonly count?: number;
  readonly aside?: ReactNode;
  /** A heading with a rule below it, as over a list; or letters alone, as over a drawing. */
  readonly ruled?: boolean;
  readonly children: ReactNode;
}

/** One part of a sheet under its heading. */
export function Part({ title, count, aside, ruled = false, children }: PartProps) {
  return (
    <section className={styles.part}>
      <h2 data-ruled={ruled || undefined}>
        {title}
        {count !== undefined && <span className={styles.count}>{count}</span>}
        {aside !== undefined && <span className={styles.aside}>{aside}</span>}
      </h2>
      {children}
    </section>
  );
}
