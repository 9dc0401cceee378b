import styles from './NotYet.module.css';

export interface NotYetProps {
  /** What will be done: `Order the kit`. */
  readonly what: string;
  /** When: `after the three mends`. */
  readonly when: string;
}

/** Something that cannot be done yet: dashed, with the reason beside it. It is no button, and takes no focus. */
export function NotYet({ what, when }: NotYetProps) {
  return (
    <p className={styles.notYet}>
      <span>{what}</span> <em>{when}</em>
    </p>
  );
}
