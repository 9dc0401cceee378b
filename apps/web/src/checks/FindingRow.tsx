import type { Change, Finding } from '@eaveline/plan';
import { Act } from '../parts/Act.tsx';
import { Mark } from '../parts/Mark.tsx';
import { RuleGauge } from '../parts/RuleGauge.tsx';
import { apart } from '../words/figure.ts';
import { keepTogether } from '../words/keepTogether.ts';
import styles from './FindingRow.module.css';
import { mendWords } from './mendWords.ts';

export interface FindingRowProps {
  readonly finding: Finding;
  readonly selected: boolean;
  /** The one next act of the sheet stands in marker. */
  readonly main: boolean;
  readonly onSelect: (id: string) => void;
  readonly onMend: (changes: readonly Change[], words: string) => void;
}

/** One finding that does not meet: what was judged, how it stands, the gauge, the clause, what would mend it. */
export function FindingRow({ finding, selected, main, onSelect, onMend }: FindingRowProps) {
  const { id, state, title, detail, value, limit, unit = '', sense, clause, mends } = finding;
  const pair = value !== undefined && limit !== undefined ? apart(value, limit) : undefined;
  const [first, ...others] = mends;
  return (
    <li className={styles.row} data-state={state} data-selected={selected || undefined}>
      <span className={styles.state}>
        <Mark state={state} size={22} />
        <em>{state}</em>
      </span>
      <div>
        <button
          type="button"
          className={styles.title}
          data-subject={id}
          aria-pressed={selected}
          onClick={() => onSelect(id)}
        >
          {keepTogether(title)}
        </button>
        {detail !== undefined && <p className={styles.detail}>{keepTogether(detail)}</p>}
        {first && (
          <p className={styles.mends}>
            {first.changes === undefined ? (
              <span>{keepTogether(first.words)}</span>
            ) : (
              <Act
                look={main ? 'main' : 'edge'}
                onPress={() => onMend(first.changes ?? [], mendWords(finding, first.words))}
              >
                {keepTogether(first.words.replace(/\.$/, ''))}
              </Act>
            )}
            {others.slice(0, 1).map(({ words, changes }) =>
              changes === undefined ? (
                <span key={words}>or: {keepTogether(words)}</span>
              ) : (
                <Act key={words} look="plain" onPress={() => onMend(changes, mendWords(finding, words))}>
                  or {keepTogether(words.charAt(0).toLowerCase() + words.slice(1).replace(/\.$/, ''))}
                </Act>
              ),
            )}
          </p>
        )}
      </div>
      <div className={styles.gauge}>
        {pair && value !== undefined && limit !== undefined && sense !== undefined && (
          <RuleGauge
            width={156}
            unit={unit}
            decimals={pair.decimals}
            limit={{ value: limit, sense }}
            needle={{ value, fails: state === 'fails' }}
          />
        )}
      </div>
      <div className={styles.clause}>{clause}</div>
    </li>
  );
}
