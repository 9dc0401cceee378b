import type { DayTask } from '@eaveline/plan';
import { Caution } from '../parts/Caution.tsx';
import { TickField } from '../parts/TickField.tsx';
import { useInView } from '../parts/useInView.ts';
import { Hold } from './Hold.tsx';
import styles from './TaskRow.module.css';
import { whenWords } from './whenWords.ts';

export interface TaskRowProps {
  readonly task: DayTask;
  readonly number: number;
  readonly startH: number;
  /** Caution of the task above: the same one is not said twice running. */
  readonly cautionAbove: string | undefined;
  readonly selected: boolean;
  readonly onSelect: (id: string) => void;
}

/** One task: caution above it, when and who, its steps where it is selected and in print, its hold below it. */
export function TaskRow({ task, number, startH, cautionAbove, selected, onSelect }: TaskRowProps) {
  const { id, name, who, hold, caution, steps } = task;
  const ref = useInView<HTMLLIElement>(selected);
  return (
    <li ref={ref} className={styles.row} data-selected={selected || undefined}>
      {caution !== undefined && caution !== cautionAbove && <Caution words={caution} />}
      <div className={styles.task}>
        <span className={styles.number}>{number}</span>
        <button
          type="button"
          data-subject={`task:${id}`}
          aria-pressed={selected}
          onClick={() => onSelect(`task:${id}`)}
        >
          {name}
        </button>
        <span className={styles.who}>{who}</span>
        <span className={styles.when}>{whenWords(task, startH)}</span>
      </div>
      <ul className={styles.steps}>
        {steps.map((step) => (
          <li key={step}>{step}</li>
        ))}
      </ul>
      {selected && (
        <div className={styles.before}>
          <TickField label="Done before the first day" path={['choices', 'day', 'doneBefore', id]} off={undefined} />
        </div>
      )}
      {hold !== undefined && <Hold words={hold} />}
    </li>
  );
}
