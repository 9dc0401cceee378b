import type { TestRow } from '@eaveline/plan';
import { Caution } from '../parts/Caution.tsx';
import { useInView } from '../parts/useInView.ts';
import { sentence } from '../words/count.ts';
import { ReadingForm } from './ReadingForm.tsx';
import { ReadingSays } from './ReadingSays.tsx';
import type { Readings } from './reading.ts';
import { failsReading } from './standing.ts';
import { TestExpects } from './TestExpects.tsx';
import { TestGauge } from './TestGauge.tsx';
import styles from './TestLine.module.css';

export interface TestLineProps {
  readonly row: TestRow;
  readonly rows: readonly TestRow[];
  readonly record: Readings[string] | undefined;
  /** True where the row above is the same test at another point: what it is done with is said once. */
  readonly asAbove: boolean;
  readonly selected: boolean;
  readonly onSelect: (id: string) => void;
}

/** One test: where, with what, what is expected on the rule, the limit, and how a reading stands to both. */
export function TestLine({ row, rows, record, asAbove, selected, onSelect }: TestLineProps) {
  const ref = useInView<HTMLLIElement>(selected);
  const { id, name, point, instrument, caution, conditions, suspects } = row;
  const off = failsReading(row);
  return (
    <li ref={ref} className={styles.test} data-selected={selected || undefined}>
      {caution !== undefined && (
        <div className={styles.wide}>
          <Caution words={caution} />
        </div>
      )}
      <div className={styles.what}>
        <button type="button" data-subject={id} aria-pressed={selected} onClick={() => onSelect(id)}>
          {name}
        </button>
        <p className="small">{sentence(point)}.</p>
        {(selected || !asAbove) && instrument !== point && <p className="small quiet">{sentence(instrument)}.</p>}
        {selected &&
          conditions.map((condition) => (
            <p key={condition} className="small quiet">
              {condition}
            </p>
          ))}
      </div>
      <div className={styles.rule}>
        <TestGauge row={row} width={190} />
      </div>
      <div className={styles.says}>
        <TestExpects row={row} />
        {row.reading === undefined ? <p className={styles.write}>read</p> : <ReadingSays row={row} record={record} />}
      </div>
      {(off || selected) && suspects.length > 0 && (
        <div className={styles.wide}>
          <p className={styles.look}>{off ? 'Look at, likeliest first' : 'Where it misses, likeliest first'}</p>
          <ol className={styles.suspects}>
            {suspects.map((suspect) => (
              <li key={suspect}>{suspect}</li>
            ))}
          </ol>
        </div>
      )}
      {selected && <ReadingForm key={id} row={row} rows={rows} />}
    </li>
  );
}
