import type { DayTask } from '@eaveline/plan';
import { Caution } from '../parts/Caution.tsx';
import { TickField } from '../parts/TickField.tsx';
import { clock } from '../words/clock.ts';
import { Hold } from './Hold.tsx';
import styles from './TaskCard.module.css';
import type { NumberedTask } from './taskOrder.ts';
import { whenWords } from './whenWords.ts';

export interface TaskCardProps {
  readonly of: NumberedTask<DayTask>;
  readonly next: NumberedTask<DayTask> | undefined;
  readonly startH: number;
  /** True where the clock of the place says that it is at work. */
  readonly now: boolean;
  readonly onSelect: (id: string) => void;
}

/** One task for a hand on a ladder: its caution, what and who in marker, the steps, the hold, and what comes next. */
export function TaskCard({ of: { number, task }, next, startH, now, onSelect }: TaskCardProps) {
  const { id, name, who, steps, hold, caution, day } = task;
  return (
    <article>
      {caution !== undefined && <Caution words={caution} />}
      <div className={styles.block}>
        <p className={styles.when}>
          <span>{now ? 'Now' : `Task ${number}${day === undefined ? '' : `, day ${day}`}`}</span>
          <span>{whenWords(task, startH)}</span>
        </p>
        <h2>{name}</h2>
        <p className={styles.who}>{who}</p>
      </div>
      <ul className={styles.steps}>
        {steps.map((step) => (
          <li key={step}>{step}</li>
        ))}
      </ul>
      {hold !== undefined && <Hold words={hold} />}
      {next && (
        <button type="button" className={styles.next} onClick={() => onSelect(`task:${next.task.id}`)}>
          <span className="quiet">Next</span>
          <span>
            <b>{next.task.name}</b>
            <span className={styles.who}>
              {next.task.who}
              {next.task.startH !== undefined && `, from ${clock(startH + next.task.startH)}`}
            </span>
          </span>
        </button>
      )}
      <TickField label="Done before the first day" path={['choices', 'day', 'doneBefore', id]} off={undefined} />
    </article>
  );
}
