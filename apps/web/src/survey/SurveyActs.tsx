import type { ReactNode } from 'react';
import styles from './Survey.module.css';

export interface SurveyActsProps {
  /** The way out. */
  readonly left: { readonly words: ReactNode; readonly onPress: () => void };
  /** The wanted one. */
  readonly right: { readonly words: ReactNode; readonly onPress: () => void };
}

/** Two answers at the foot of the survey, as large as a thumb: the wanted one right. */
export function SurveyActs({ left, right }: SurveyActsProps) {
  return (
    <div className={styles.acts}>
      <button type="button" onClick={left.onPress}>
        {left.words}
      </button>
      <button type="button" data-look="main" onClick={right.onPress}>
        {right.words}
      </button>
    </div>
  );
}
