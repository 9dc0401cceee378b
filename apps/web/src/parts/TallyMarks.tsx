import type { Tally } from '@eaveline/plan';
import { Mark } from './Mark.tsx';
import styles from './TallyMarks.module.css';

export interface TallyMarksProps {
  readonly tally: Pick<Tally, 'fails' | 'ask'>;
  /** Draw the open tick where nothing fails and nothing asks. */
  readonly tick?: boolean;
}

/** How many fail and how many ask, with their marks; the words go to a screen reader. */
export function TallyMarks({ tally: { fails, ask }, tick = false }: TallyMarksProps) {
  return (
    <span className={styles.tally}>
      {fails > 0 && (
        <span data-state="fails">
          {fails}
          <Mark state="fails" size={14} />
          <span className="out-of-sight"> {fails === 1 ? 'fails' : 'fail'} </span>
        </span>
      )}
      {ask > 0 && (
        <span data-state="ask">
          {ask}
          <Mark state="ask" size={14} />
          <span className="out-of-sight"> {ask === 1 ? 'asks' : 'ask'} </span>
        </span>
      )}
      {tick && fails === 0 && ask === 0 && (
        <span>
          <Mark state="meets" size={15} />
          <span className="out-of-sight">all meet</span>
        </span>
      )}
    </span>
  );
}
