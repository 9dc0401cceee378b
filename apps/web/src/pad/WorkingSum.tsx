import type { Working } from '@eaveline/plan';
import { Formula } from '../parts/Formula.tsx';
import { SymbolOf } from '../parts/SymbolOf.tsx';
import styles from './Pad.module.css';
import { putIn } from './putIn.ts';
import { sourceWords } from './sourceWords.ts';
import { symbolsOf } from './symbolsOf.ts';
import { rangeWords, valueWords } from './valueWords.ts';
import { WorkingSteps } from './WorkingSteps.tsx';

export interface WorkingSumProps {
  readonly working: Working;
}

/** A working written out: its steps, the formula, the figures put in, what it comes to, and where that comes from. */
export function WorkingSum({ working }: WorkingSumProps) {
  const { name, symbol, formula, note, inputs = [] } = working;
  const figures = putIn(working);
  const range = rangeWords(working);
  return (
    <>
      <WorkingSteps inputs={inputs} />
      {formula !== undefined && (
        <p className={styles.formula}>
          {symbol !== undefined && !formula.startsWith(symbol) && (
            <>
              <SymbolOf symbol={symbol} />:{' '}
            </>
          )}
          <Formula words={formula} symbols={symbolsOf(working)} />
        </p>
      )}
      {figures !== undefined && <p className={styles.figures}>= {figures}</p>}
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
