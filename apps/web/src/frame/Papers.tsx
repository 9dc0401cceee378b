import { sentence } from '../words/count.ts';
import styles from './Papers.module.css';
import { layPaper, PAPERS, usePaper } from './paper.ts';

export interface PapersProps {
  readonly onKeys: () => void;
}

/** Which paper the sheets lie on, and where the keys are. */
export function Papers({ onKeys }: PapersProps) {
  const current = usePaper();
  return (
    <div className={styles.papers}>
      {PAPERS.map((paper) => (
        <button key={paper} type="button" aria-pressed={paper === current} onClick={() => layPaper(paper)}>
          {sentence(paper)}
        </button>
      ))}
      <button type="button" className={styles.keys} onClick={onKeys}>
        Keys ?
      </button>
    </div>
  );
}
