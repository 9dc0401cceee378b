import type { Finding } from '@eaveline/plan';
import styles from './Mark.module.css';

export interface MarkProps {
  readonly state: Finding['state'];
  readonly size?: number;
}

const SHAPES = {
  fails: (
    <>
      <rect x="1" y="1" width="16" height="16" fill="currentColor" />
      <path d="M5.2 5.2 12.8 12.8M12.8 5.2 5.2 12.8" stroke="var(--ink-on-solid)" strokeWidth="2.4" fill="none" />
    </>
  ),
  ask: (
    <>
      <circle cx="9" cy="9" r="7.6" fill="none" stroke="currentColor" strokeWidth="1.8" />
      <path
        d="M6.6 7.3c0-1.5 1-2.5 2.5-2.5s2.4 1 2.4 2.3c0 1.9-2.4 1.9-2.4 3.6"
        fill="none"
        stroke="currentColor"
        strokeWidth="1.9"
      />
      <rect x="8.1" y="11.9" width="2" height="2" fill="currentColor" />
    </>
  ),
  meets: <path d="M3 9.6 7.2 13.8 15.2 4.6" fill="none" stroke="currentColor" strokeWidth="2" />,
} as const;

/** The sign of a state: the worse it stands, the more ink. Always beside its word. */
export function Mark({ state, size = 18 }: MarkProps) {
  return (
    <svg className={styles.mark} data-state={state} viewBox="0 0 18 18" width={size} height={size} aria-hidden="true">
      {SHAPES[state]}
    </svg>
  );
}
