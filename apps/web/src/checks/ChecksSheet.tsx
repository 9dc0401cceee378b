import type { Finding } from '@eaveline/plan';
import { useState } from 'react';
import type { SheetProps } from '../desk/sheetView.ts';
import { useJob } from '../job/JobContext.tsx';
import { Part } from '../parts/Part.tsx';
import styles from './ChecksSheet.module.css';
import { FindingFilter } from './FindingFilter.tsx';
import { FindingRow } from './FindingRow.tsx';
import { EVERYTHING, filtered } from './filter.ts';
import { MeetsRow } from './MeetsRow.tsx';

const NEAREST = 8;

/** Sheet 08: every rule applied to every thing, what stops the job first, each with its way out. */
export function ChecksSheet({ plan, selected, onSelect }: SheetProps) {
  const [every, setEvery] = useState(false);
  const [filter, setFilter] = useState(EVERYTHING);
  const findings = filtered(plan.checks.findings, filter);
  const fails = findings.filter(({ state }) => state === 'fails');
  const asks = findings.filter(({ state }) => state === 'ask');
  const meets = findings.filter(({ state }) => state === 'meets');
  const next = fails.find(({ mends }) => mends[0]?.changes !== undefined);
  const whole = every || filter !== EVERYTHING || meets.findIndex(({ id }) => id === selected) >= NEAREST;
  const shown = whole ? meets : meets.slice(0, NEAREST);
  const rows = { selected, onSelect, next };
  return (
    <>
      <FindingFilter findings={plan.checks.findings} filter={filter} onFilter={setFilter} />
      <OpenPart title="Stops the job" findings={fails.filter(({ stops }) => stops)} {...rows} />
      <OpenPart title="Fails without stopping it" findings={fails.filter(({ stops }) => !stops)} {...rows} />
      <OpenPart title="Waits for an answer" findings={asks} {...rows} />
      {findings.length === 0 && <p className={styles.none}>Nothing is judged of that. Show all, or pick another.</p>}
      {meets.length > 0 && (
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
      )}
    </>
  );
}

interface OpenPartProps extends Pick<SheetProps, 'selected' | 'onSelect'> {
  readonly title: string;
  readonly findings: readonly Finding[];
  /** Its mend is the one next act of the sheet. */
  readonly next: Finding | undefined;
}

/** Findings that fail or ask, in the order of the plan: what stops the job and is furthest over its limit first. */
function OpenPart({ title, findings, next, selected, onSelect }: OpenPartProps) {
  const { mend } = useJob();
  if (findings.length === 0) return null;
  return (
    <Part title={title} count={findings.length} ruled>
      <ol>
        {findings.map((finding) => (
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
  );
}
