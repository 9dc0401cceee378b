import type { TestRow } from '@eaveline/plan';
import { Mark } from '../parts/Mark.tsx';
import { failsReading } from './standing.ts';
import styles from './TestPick.module.css';
import { GROUPS } from './testGroups.ts';

export interface TestPickProps {
  readonly rows: readonly TestRow[];
  readonly now: string;
  readonly onPick: (id: string) => void;
}

/** All tests in short, to go to one: name, place, and how its reading stands. */
export function TestPick({ rows, now, onPick }: TestPickProps) {
  return GROUPS.map(({ group, title }) => {
    const mine = rows.filter((row) => row.group === group);
    if (mine.length === 0) return null;
    return (
      <section key={group} className={styles.group}>
        <h2>{title}</h2>
        <ol>
          {mine.map((row) => (
            <li key={row.id}>
              <button type="button" aria-current={row.id === now || undefined} onClick={() => onPick(row.id)}>
                <span>
                  <b>{row.name}</b>
                  <span>{row.point}</span>
                </span>
                {row.reading !== undefined && (
                  <span className={styles.state}>
                    <Mark state={failsReading(row) ? 'fails' : 'meets'} />
                    <span className="out-of-sight">{failsReading(row) ? 'fails' : 'meets'}</span>
                  </span>
                )}
              </button>
            </li>
          ))}
        </ol>
      </section>
    );
  });
}
