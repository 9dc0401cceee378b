import { workingOf } from './goesOnTo.ts';
import styles from './PadStrip.module.css';
import type { PlacedSubject } from './subject.ts';
import { valueWords } from './valueWords.ts';

export interface PadStripProps {
  readonly subject: PlacedSubject | undefined;
  readonly onOpen: () => void;
}

/** Where the pad does not lie beside the sheet: what is selected, and the way to its working. */
export function PadStrip({ subject, onOpen }: PadStripProps) {
  if (subject === undefined) return null;
  const working = workingOf(subject);
  return (
    <button type="button" className={styles.strip} onClick={onOpen}>
      <span>
        <b>{subject.name}</b>
        {working && <span className="quiet"> {valueWords(working)}</span>}
      </span>
      <span className={styles.open}>Working</span>
    </button>
  );
}
