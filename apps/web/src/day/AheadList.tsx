import type { Change, DayPlan } from '@eaveline/plan';
import { useJob } from '../job/JobContext.tsx';
import { Act } from '../parts/Act.tsx';
import { counted } from '../words/count.ts';
import { figure, percent } from '../words/figure.ts';
import styles from './AheadList.module.css';
import { hundredths } from './hundredths.ts';

export interface AheadListProps {
  readonly day: Pick<DayPlan, 'ahead' | 'days' | 'wantedChance' | 'chanceByDays'>;
}

/** What done before the first day would save: hours, and the chance that a day less is enough; and the way to choose it. */
export function AheadList({ day: { ahead, days, wantedChance, chanceByDays } }: AheadListProps) {
  const { edit } = useJob();
  const take = (taskIds: readonly string[], words: string) => {
    const changes = taskIds.map((id): Change => ({ path: ['choices', 'day', 'doneBefore', id], value: true }));
    edit(changes, `done before: ${words}`);
  };
  const less = counted(days - 1, 'day');
  const asIs = chanceByDays.find((each) => each.days === days - 1)?.chance;
  return (
    <table className={styles.ahead}>
      <thead>
        <tr>
          <th scope="col">done before the first day</th>
          <th scope="col">saves</th>
          <th scope="col">{less} enough</th>
          <th scope="col">
            <span className="out-of-sight">choose it</span>
          </th>
        </tr>
      </thead>
      <tbody>
        {asIs !== undefined && (
          <tr>
            <th scope="row">nothing</th>
            <td>{'\u2013'}</td>
            <td>{percent(hundredths(asIs) / 100)}</td>
            <td />
          </tr>
        )}
        {ahead.map(({ taskIds, words, savesHours, chanceOneDayLess }) => (
          <tr key={taskIds.join()} data-enough={chanceOneDayLess >= wantedChance || undefined}>
            <th scope="row">{words}</th>
            <td>{figure(savesHours, 1)} h</td>
            <td>{percent(hundredths(chanceOneDayLess) / 100)}</td>
            <td>
              <Act look="plain" onPress={() => take(taskIds, words)} label={`Do before: ${words}`}>
                Do it before
              </Act>
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
