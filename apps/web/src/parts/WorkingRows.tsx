import type { Subject } from '../pad/subject.ts';
import { valueWords } from '../pad/valueWords.ts';
import styles from './WorkingRows.module.css';

export interface WorkingRowsProps {
  readonly subjects: readonly Subject[];
  readonly selected: string | undefined;
  readonly onSelect: (id: string) => void;
}

/** Figures of a sheet, a row each; pressed, a row shows on the pad how its figure came about. */
export function WorkingRows({ subjects, selected, onSelect }: WorkingRowsProps) {
  return (
    <ul className={styles.rows}>
      {subjects.map(({ id, name, working }) => (
        <li key={id} data-selected={selected === id || undefined}>
          <button type="button" data-subject={id} aria-pressed={selected === id} onClick={() => onSelect(id)}>
            <span>{name}</span>
            <span className="num">{working && valueWords(working)}</span>
          </button>
        </li>
      ))}
    </ul>
  );
}
