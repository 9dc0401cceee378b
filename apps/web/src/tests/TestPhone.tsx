import type { TestRow } from '@eaveline/plan';
import { useState } from 'react';
import { Caution } from '../parts/Caution.tsx';
import { sentence } from '../words/count.ts';
import { ReadingForm } from './ReadingForm.tsx';
import { ReadingSays } from './ReadingSays.tsx';
import type { Readings } from './reading.ts';
import { failsReading } from './standing.ts';
import { TestExpects } from './TestExpects.tsx';
import { TestGauge } from './TestGauge.tsx';
import styles from './TestPhone.module.css';
import { TestPick } from './TestPick.tsx';
import { placeInGroup } from './testGroups.ts';

export interface TestPhoneProps {
  readonly row: TestRow;
  readonly rows: readonly TestRow[];
  readonly record: Readings[string] | undefined;
  readonly onSelect: (id: string) => void;
}

/** One test at a time, for one hand on a roof: what and where, the rule, the reading in large figures, two answers. */
export function TestPhone({ row, rows, record, onSelect }: TestPhoneProps) {
  const [listed, setListed] = useState(false);
  const at = rows.indexOf(row);
  const go = (to: TestRow | undefined) => {
    setListed(false);
    if (to !== undefined) onSelect(to.id);
    document.getElementById('sheet')?.scrollTo({ top: 0 });
  };
  const next = rows[at + 1];
  return (
    <article className={styles.test}>
      <p className={styles.place}>
        <button type="button" onClick={() => go(rows[at - 1])} disabled={at === 0}>
          Before
        </button>
        <span>{placeInGroup(rows, row)}</span>
        <button type="button" aria-expanded={listed} onClick={() => setListed(!listed)}>
          {listed ? 'This one' : `All ${rows.length}`}
        </button>
      </p>
      {listed ? (
        <TestPick rows={rows} now={row.id} onPick={(id) => go(rows.find((each) => each.id === id))} />
      ) : (
        <>
          {row.caution !== undefined && <Caution words={row.caution} />}
          <h2>{row.name}</h2>
          <p className={styles.point}>{sentence(row.point)}.</p>
          <ul className={styles.how}>
            {[`${sentence(row.instrument)}.`, ...row.conditions].map((each) => (
              <li key={each}>{each}</li>
            ))}
          </ul>
          <div className={styles.gauge}>
            <TestGauge row={row} width={240} />
          </div>
          <div className={styles.expects}>
            <TestExpects row={row} />
          </div>
          {row.reading !== undefined && <ReadingSays row={row} record={record} large />}
          {failsReading(row) && row.suspects.length > 0 && (
            <section className={styles.suspects}>
              <h3>Look at, likeliest first</h3>
              <ol>
                {row.suspects.map((suspect) => (
                  <li key={suspect}>{suspect}</li>
                ))}
              </ol>
            </section>
          )}
          <ReadingForm key={row.id} row={row} rows={rows} onNext={next === undefined ? undefined : () => go(next)} />
        </>
      )}
    </article>
  );
}
