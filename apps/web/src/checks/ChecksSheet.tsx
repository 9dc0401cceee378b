import { useState } from 'react';
import type { SheetProps } from '../desk/sheetView.ts';
import { useJob } from '../job/JobContext.tsx';
import { Part } from '../parts/Part.tsx';
import styles from './ChecksSheet.module.css';
import { FindingRow } from './FindingRow.tsx';
import { MeetsRow } from './MeetsRow.tsx';

const NEAREST = 8;

/** Sheet 08: every rule applied to every thing, what stops the job first, each with its way out. */
export function ChecksSheet({ plan, selected, onSelect }: SheetProps) {
  const { mend } = useJob();
  const [every, setEvery] = useState(false);
  const { findings } = plan.checks;
  const fails = findings.filter(({ state }) => state === 'fails');
  const asks = findings.filter(({ state }) => state === 'ask');
  const meets = findings.filter(({ state }) => state === 'meets');
  const next = fails.find(({ mends }) => mends[0]?.changes !== undefined);
  const shown = every || meets.findIndex(({ id }) => id === selected) >= NEAREST ? meets : meets.slice(0, NEAREST);
  return (
    <>
      {fails.length > 0 && (
        <Part title="Stops the job" count={fails.length} ruled>
          <ol>
            {fails.map((finding) => (
              <FindingRow
                key={finding.id}
                finding={finding}
                selected={selected === finding.id}
                main={finding === next}
                onSelect={onSelect}
                onMend={mend}
              />
            ))}
          </ol>
        </Part>
      )}
      {asks.length > 0 && (
        <Part title="Waits for an answer" count={asks.length} ruled>
          <ol>
            {asks.map((finding) => (
              <FindingRow
                key={finding.id}
                finding={finding}
                selected={selected === finding.id}
                main={false}
                onSelect={onSelect}
                onMend={mend}
              />
            ))}
          </ol>
        </Part>
      )}
      <Part
        title="Meets"
        count={meets.length}
        ruled
        aside={
          shown.length < meets.length ? (
            <>
              The nearest to their limits.{' '}
              <button type="button" className={styles.all} onClick={() => setEvery(true)}>
                All {meets.length}
              </button>
            </>
          ) : undefined
        }
      >
        <ul className={styles.meets}>
          {shown.map((finding) => (
            <MeetsRow key={finding.id} finding={finding} selected={selected === finding.id} onSelect={onSelect} />
          ))}
        </ul>
      </Part>
    </>
  );
}
