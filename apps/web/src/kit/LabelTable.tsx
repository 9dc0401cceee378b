import type { KitPlan } from '@eaveline/plan';
import styles from './LabelTable.module.css';

export interface LabelTableProps {
  readonly labels: KitPlan['labels'];
  readonly selected: string | undefined;
  readonly onSelect: (id: string) => void;
}

/** The labels of the region: how many, the words on them, where they go, which clause asks for them and how it is known. */
export function LabelTable({ labels, selected, onSelect }: LabelTableProps) {
  return (
    <ul className={styles.labels}>
      {labels.map(({ id, text, where, clause, seen, count }) => {
        const subject = `kit:label:${id}`;
        const on = selected === subject;
        return (
          <li key={id} data-selected={on || undefined}>
            <span className={styles.count}>{count}</span>
            <button type="button" data-subject={subject} aria-pressed={on} onClick={() => onSelect(subject)}>
              {text}
            </button>
            <span>{where}</span>
            <span className={styles.clause}>
              {clause}
              {seen === 'memory' && ', from memory'}
            </span>
          </li>
        );
      })}
    </ul>
  );
}
