import type { Finding } from '@eaveline/plan';
import { RuleGauge } from '../parts/RuleGauge.tsx';
import { StateWord } from '../parts/StateWord.tsx';
import { apart } from '../words/figure.ts';
import { keepTogether } from '../words/keepTogether.ts';
import styles from './FindingVerdict.module.css';
import { seenWords } from './seenWords.ts';

export interface FindingVerdictProps {
  readonly finding: Finding;
}

/** How a rule judged the figure: the rule gauge, mark and word, what is left, clause and how the limit is known. */
export function FindingVerdict({ finding }: FindingVerdictProps) {
  const { state, unconfirmed, value, limit, unit = '', sense, clause, edition, title, detail } = finding;
  const pair = value !== undefined && limit !== undefined ? apart(value, limit) : undefined;
  return (
    <div className={styles.verdict}>
      {value !== undefined && limit !== undefined && sense !== undefined && pair && (
        <RuleGauge
          width={320}
          unit={unit}
          decimals={pair.decimals}
          limit={{ value: limit, sense }}
          needle={{ value, fails: state === 'fails' }}
          {...offeredOf(finding)}
        />
      )}
      <p className={styles.word}>
        <StateWord state={state} unconfirmed={unconfirmed} />
        {pair && (
          <span>
            {' '}
            {pair.value}&nbsp;{unit}, {sense} {pair.limit}&nbsp;{unit}
          </span>
        )}
      </p>
      <p className={styles.title}>{keepTogether(title)}</p>
      {detail !== undefined && <p className="quiet">{keepTogether(detail)}</p>}
      <p className={styles.source}>
        {clause}
        {edition !== '' && finding.seen !== 'equipment sheet' && `. Edition: ${edition}`}. {seenWords(finding)}
      </p>
    </div>
  );
}

function offeredOf({ mends }: Finding) {
  const offered = mends.find(({ value }) => value !== undefined)?.value;
  return offered === undefined ? {} : { offered };
}
