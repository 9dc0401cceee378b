import { Act } from '../parts/Act.tsx';
import styles from './Progress.module.css';
import type { Progress as PlanProgress } from './planSoFar.ts';
import { useLate } from './useLate.ts';

/** Most plans are there sooner; words that come and go at once are only a flicker. */
const SHOWN_AFTER_MS = 400;

export interface ProgressProps {
  readonly progress: PlanProgress | undefined;
  readonly onStop: () => void;
}

/** Where long work stands, in words, and the way to end it. */
export function Progress({ progress, onStop }: ProgressProps) {
  const long = useLate(progress !== undefined, SHOWN_AFTER_MS);
  if (progress === undefined || !long) return null;
  return (
    <div className={styles.progress}>
      <span role="status">
        Working out {progress.stage}, {progress.done + 1} of {progress.of}
      </span>
      <Act look="plain" onPress={onStop}>
        Stop
      </Act>
    </div>
  );
}
