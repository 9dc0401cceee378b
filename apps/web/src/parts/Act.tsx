import type { ReactNode } from 'react';
import styles from './Act.module.css';

export interface ActProps {
  readonly children: ReactNode;
  readonly onPress: () => void;
  /** The one next act of the screen stands in marker; a plain one reads like a link. */
  readonly look?: 'main' | 'edge' | 'plain';
  readonly label?: string;
}

/** Something that can be done. */
export function Act({ children, onPress, look = 'edge', label }: ActProps) {
  return (
    <button type="button" className={styles.act} data-look={look} onClick={onPress} aria-label={label}>
      {children}
    </button>
  );
}
