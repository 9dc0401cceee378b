import type { DayPlan } from '@eaveline/plan';
import { clock } from '../words/clock.ts';
import styles from './TaskList.module.css';

export interface TaskListProps {
  readonly day: DayPlan;
  readonly startH: number;
  readonly selected: string | undefined;
  readonly onSelect: (id: string) => void;
}

/** Tasks in the order of the day, cautions before and hold points after: nobody passes a hold. */
export function TaskList({ day, startH, selected, onSelect }: TaskListProps) {
  const order = [...day.tasks].sort((a, b) => (a.day ?? 0) - (b.day ?? 0) || (a.startH ?? -1) - (b.startH ?? -1));
  return (
    <ol className={styles.tasks}>
      {order.map(({ id, name, who, doneBefore, day: on, startH: begins, endH, hold, caution }) => (
        <li key={id} data-selected={selected === `task:${id}` || undefined}>
          {caution !== undefined && (
            <p className={styles.caution}>
              <svg width="20" height="18" viewBox="0 0 20 18" aria-hidden="true">
                <path className="pen50" d="M10 1.5 19 17H1Z" />
                <path className="pen50" d="M10 7v5m0 2v2" />
              </svg>
              <b>{caution}</b>
            </p>
          )}
          <div className={styles.task}>
            <span className={styles.when}>
              {doneBefore
                ? 'before'
                : begins === undefined
                  ? ''
                  : `${on === undefined || on === 1 ? '' : `day ${on} `}${clock(startH + begins)}`}
            </span>
            <button
              type="button"
              data-subject={`task:${id}`}
              aria-pressed={selected === `task:${id}`}
              onClick={() => onSelect(`task:${id}`)}
            >
              {name}
            </button>
            <span className="quiet small">{who}</span>
            <span className="num small">{doneBefore || endH === undefined ? '' : `to ${clock(startH + endH)}`}</span>
          </div>
          {hold !== undefined && (
            <p className={styles.hold}>
              <b>Hold</b> {hold}
            </p>
          )}
        </li>
      ))}
    </ol>
  );
}
