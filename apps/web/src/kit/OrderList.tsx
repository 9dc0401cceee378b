import type { KitLine } from '@eaveline/plan';
import { sentence } from '../words/count.ts';
import { countWords } from './countWords.ts';
import styles from './OrderList.module.css';

export interface OrderListProps {
  readonly lines: readonly KitLine[];
  readonly selected: string | undefined;
  readonly onSelect: (id: string) => void;
}

/** Groups in the order they are packed; labels stand in a table of their own. */
const GROUPS: readonly KitLine['group'][] = [
  'array',
  'mounting',
  'trunks',
  'cables',
  'board',
  'battery',
  'tools and tests',
];

/** What to order, group by group: how many, of what, and how the count came about. */
export function OrderList({ lines, selected, onSelect }: OrderListProps) {
  return (
    <table className={styles.order}>
      <thead className="out-of-sight">
        <tr>
          <th scope="col">count</th>
          <th scope="col">unit</th>
          <th scope="col">what</th>
          <th scope="col">counted how</th>
        </tr>
      </thead>
      {GROUPS.map((group) => {
        const mine = lines.filter((line) => line.group === group);
        if (mine.length === 0) return null;
        return (
          <tbody key={group}>
            <tr>
              <th scope="rowgroup" colSpan={4} className={styles.group}>
                {sentence(group)}
              </th>
            </tr>
            {mine.map(({ id, name, count, unit, working }) => {
              const subject = `kit:${id}`;
              const on = selected === subject;
              return (
                <tr key={id} data-selected={on || undefined}>
                  <td className={styles.count}>{countWords(count, unit)}</td>
                  <td className={styles.unit}>{unit === 'pieces' ? '' : unit}</td>
                  <th scope="row">
                    <button type="button" data-subject={subject} aria-pressed={on} onClick={() => onSelect(subject)}>
                      {name}
                    </button>
                  </th>
                  <td className={styles.how}>{working.formula}</td>
                </tr>
              );
            })}
          </tbody>
        );
      })}
    </table>
  );
}
