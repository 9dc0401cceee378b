import type { DayTask } from '@eaveline/plan';
import { Part } from '../parts/Part.tsx';
import { TaskRow } from './TaskRow.tsx';
import type { NumberedTask } from './taskOrder.ts';

export interface TaskListProps {
  readonly tasks: readonly NumberedTask<DayTask>[];
  readonly startH: number;
  readonly selected: string | undefined;
  readonly onSelect: (id: string) => void;
}

/** Tasks under the day they begin on, cautions before and hold points after them. */
export function TaskList({ tasks, startH, selected, onSelect }: TaskListProps) {
  const days = [...new Set(tasks.map(({ task }) => (task.doneBefore ? 0 : (task.day ?? 0))))];
  return days.map((on) => {
    const mine = tasks.filter(({ task }) => (task.doneBefore ? 0 : (task.day ?? 0)) === on);
    return (
      <Part key={on} title={on === 0 ? 'Done before the first day' : `Day ${on}`} count={mine.length} ruled>
        <ol>
          {mine.map(({ number, task }, i) => (
            <TaskRow
              key={task.id}
              task={task}
              number={number}
              startH={startH}
              cautionAbove={mine[i - 1]?.task.caution}
              selected={selected === `task:${task.id}`}
              onSelect={onSelect}
            />
          ))}
        </ol>
      </Part>
    );
  });
}
