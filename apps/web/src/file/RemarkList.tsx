import type { JobRemark } from '@eaveline/job';
import { Mark } from '../parts/Mark.tsx';
import styles from './RemarkList.module.css';

const WORD = { stop: 'Stops it', warn: 'Look at it', note: 'Note' } as const;
const MARK = { stop: 'fails', warn: 'ask', note: undefined } as const;

export interface RemarkListProps {
  readonly remarks: readonly JobRemark[];
}

/** Everything a reader noticed in a file: where, what was found, what was wanted, the way out. */
export function RemarkList({ remarks }: RemarkListProps) {
  return (
    <ol className={styles.remarks}>
      {remarks.map(({ severity, at, line, column, found, wanted, mend }) => {
        const mark = MARK[severity];
        const where = [line !== undefined && `line ${line}`, column !== undefined && `column ${column}`, at]
          .filter((words) => words !== false && words !== '')
          .join(', ');
        return (
          <li key={`${line} ${column} ${at} ${found}`}>
            <b data-state={mark}>
              {mark !== undefined && <Mark state={mark} size={15} />} {WORD[severity]}
            </b>
            <span>
              <span className={styles.where}>{where === '' ? 'The file' : where}</span>
              <span>
                Found {found}; wanted {wanted}. {mend}
              </span>
            </span>
          </li>
        );
      })}
    </ol>
  );
}
