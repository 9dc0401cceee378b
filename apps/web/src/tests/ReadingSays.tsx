import type { TestRow } from '@eaveline/plan';
import { Mark } from '../parts/Mark.tsx';
import { MONTHS } from '../words/clock.ts';
import { withUnit } from '../words/figure.ts';
import styles from './ReadingSays.module.css';
import { isLook, type Readings } from './reading.ts';
import { standings } from './standing.ts';

export interface ReadingSaysProps {
  readonly row: TestRow;
  /** The record itself, for what stands beside the value. */
  readonly record: Readings[string] | undefined;
  /** On a phone the value stands in large figures beside what it says. */
  readonly large?: boolean;
}

/** The reading on record, who took it with what, and how it stands to the limit and to the drawing. */
export function ReadingSays({ row, record, large = false }: ReadingSaysProps) {
  const { reading } = row;
  if (reading === undefined) return null;
  const at = new Date(reading.at);
  const when = `${at.getDate()} ${MONTHS[at.getMonth()]} ${at.toTimeString().slice(0, 5)}`;
  const beside = [
    record?.with,
    `${when}, ${reading.by}`,
    record?.sunWM2 !== undefined && `under ${withUnit(record.sunWM2, 'W/m²')}`,
    record?.cellC !== undefined && `cell ${withUnit(record.cellC, '°C')}`,
  ].filter((words) => words !== undefined && words !== false);
  return (
    <div className={styles.says} data-large={large || undefined}>
      <p className={styles.value}>
        {isLook(row) ? (
          <b>{reading.value === 0 ? 'No' : 'Yes'}</b>
        ) : (
          <>
            {!large && 'read '}
            <b>{withUnit(reading.value, reading.unit)}</b>
          </>
        )}
      </p>
      <ul>
        {standings(row).map(({ state, words }) => (
          <li key={words} data-state={state}>
            <Mark state={state} size={large ? 20 : 14} />
            <span>{words}</span>
          </li>
        ))}
      </ul>
      <p className={styles.by}>{beside.join('; ')}</p>
    </div>
  );
}
