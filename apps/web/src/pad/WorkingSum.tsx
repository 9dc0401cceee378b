import type { Working } from '@eaveline/plan';
import { SymbolOf } from '../parts/SymbolOf.tsx';
import { rangeWords, valueWords } from './copyText.ts';
import styles from './Pad.module.css';
import { sourceWords } from './sourceWords.ts';
import { WorkingSteps } from './WorkingSteps.tsx';

export interface WorkingSumProps {
  readonly working: Working;
}

/** A working written out: its steps, the formula, what it comes to, and where that comes from. */
export function WorkingSum({ working }: WorkingSumProps) {
  const { name, symbol, formula, note } = working;
  const range = rangeWords(working);
  return (
    <>
      <WorkingSteps inputs={working.inputs ?? []} />
      {formula !== undefined && (
        <p className={styles.formula}>
          {symbol !== undefined && !formula.startsWith(symbol) && (
            <>
              <SymbolOf symbol={symbol} />:{' '}
            </>
          )}
          {formula}
        </p>
      )}
      <p className={styles.total}>
        <span>{name}</span>
        <span className="num">{valueWords(working)}</span>
      </p>
      {range !== undefined && <p className={styles.source}>Range {range}.</p>}
      {note !== undefined && <p className={styles.source}>{note}</p>}
      <p className={styles.source}>Source: {sourceWords(working.source)}</p>
    </>
  );
}
