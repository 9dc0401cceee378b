import type { Change, DayPlan } from '@eaveline/plan';
import { useJob } from '../job/JobContext.tsx';
import { Act } from '../parts/Act.tsx';
import table from '../parts/Table.module.css';
import { counted } from '../words/count.ts';
import { figure, percent } from '../words/figure.ts';

export interface AheadListProps {
  readonly ahead: DayPlan['ahead'];
  readonly days: number;
}

/** What done the day before would save, and the way to choose it. */
export function AheadList({ ahead, days }: AheadListProps) {
  const { mend } = useJob();
  const take = (taskIds: readonly string[], words: string) => {
    const changes = taskIds.map((id): Change => ({ path: ['choices', 'day', 'doneBefore', id], value: true }));
    mend(changes, words);
  };
  return (
    <table className={table.table}>
      <tbody>
        {ahead.map(({ taskIds, words, savesHours, days: left, chance }) => (
          <tr key={taskIds.join()}>
            <th scope="row">{words}</th>
            <td className="num">{figure(savesHours, 1)} h less</td>
            <td className="num">
              {left < days ? <b>{counted(left, 'day')}</b> : counted(left, 'day')}, {percent(chance)}
            </td>
            <td className="num">
              <Act look="plain" onPress={() => take(taskIds, `done before: ${words}`)}>
                Do it before
              </Act>
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
