import type { Working } from '@eaveline/plan';
import { useState } from 'react';
import { Formula } from '../parts/Formula.tsx';
import { SymbolOf } from '../parts/SymbolOf.tsx';
import { putIn } from './putIn.ts';
import { sourceWords } from './sourceWords.ts';
import { symbolsOf } from './symbolsOf.ts';
import { rangeWords, valueWords } from './valueWords.ts';
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
        <WorkingStep key={i} working={input} before={inputs[i - 1]} depth={depth} number={i + 1} />
      ))}
    </ol>
  );
}

interface WorkingStepProps {
  readonly working: Working;
  /** The line above: what it says already is not written again. */
  readonly before: Working | undefined;
  readonly depth: number;
  readonly number: number;
}

function WorkingStep({ working, before, depth, number }: WorkingStepProps) {
  const inputs = working.inputs ?? [];
  const [open, setOpen] = useState(false);
  const range = rangeWords(working);
  const figures = putIn(working);
  const note = working.note === before?.note ? undefined : working.note;
  const alike = before !== undefined && inputs.length + (before.inputs ?? []).length === 0;
  const formula = alike && working.formula === before.formula ? undefined : working.formula;
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
        {working.symbol !== undefined && (
          <>
            <SymbolOf symbol={working.symbol} />{' '}
          </>
        )}
        {valueWords(working)}
      </span>
      {formula !== undefined && (
        <span className={styles.how}>
          <Formula words={formula} symbols={symbolsOf(working)} />
        </span>
      )}
      {formula !== undefined && figures !== undefined && <span className={styles.how}>= {figures}</span>}
      {(range !== undefined || note !== undefined) && (
        <span className={styles.how}>{[range, note].filter((words) => words !== undefined).join('. ')}</span>
      )}
      {(open || (inputs.length === 0 && !(alike && working.source === before.source))) &&
        working.source !== 'the job' && <span className={styles.how}>{sourceWords(working.source)}</span>}
      {open && (
        <span className={styles.inner}>
          <WorkingSteps inputs={inputs} depth={depth + 1} />
        </span>
      )}
    </li>
  );
}
