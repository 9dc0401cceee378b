import type { Working } from '@eaveline/plan';
import { useState } from 'react';
import { rangeWords, valueWords } from './copyText.ts';
import styles from './WorkingSteps.module.css';

export interface WorkingStepsProps {
  readonly inputs: readonly Working[];
  readonly depth?: number;
}

/** The figures a figure was made of, a line each; one made of others opens to show them. */
export function WorkingSteps({ inputs, depth = 0 }: WorkingStepsProps) {
  return (
    <ol className={styles.steps} data-depth={depth}>
      {inputs.map((input, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: inputs of a formula keep their places, and two may bear one name
        <WorkingStep key={i} working={input} depth={depth} number={i + 1} />
      ))}
    </ol>
  );
}

interface WorkingStepProps {
  readonly working: Working;
  readonly depth: number;
  readonly number: number;
}

function WorkingStep({ working, depth, number }: WorkingStepProps) {
  const inputs = working.inputs ?? [];
  const [open, setOpen] = useState(false);
  const range = rangeWords(working);
  return (
    <li className={styles.step}>
      <span className={styles.number}>{depth === 0 ? number : ''}</span>
      {inputs.length > 0 ? (
        <button type="button" className={styles.name} aria-expanded={open} onClick={() => setOpen(!open)}>
          {working.name}
          <svg width="9" height="9" viewBox="0 0 9 9" aria-hidden="true" data-open={open || undefined}>
            <path className="pen35" d="M2 1l4 3.5L2 8" />
          </svg>
        </button>
      ) : (
        <span className={styles.name}>{working.name}</span>
      )}
      <span className={styles.value}>
        {working.symbol !== undefined && <i className="symbol">{working.symbol} </i>}
        {valueWords(working)}
      </span>
      {working.formula !== undefined && <span className={styles.how}>{working.formula}</span>}
      {(range !== undefined || working.note !== undefined) && (
        <span className={styles.how}>{[range, working.note].filter((words) => words !== undefined).join('. ')}</span>
      )}
      {(open || inputs.length === 0) && working.source !== 'the job' && (
        <span className={styles.how}>{working.source}</span>
      )}
      {open && (
        <span className={styles.inner}>
          <WorkingSteps inputs={inputs} depth={depth + 1} />
        </span>
      )}
    </li>
  );
}
