import type { TestRow } from '@eaveline/plan';
import { Mark } from '../parts/Mark.tsx';
import { RuleGauge } from '../parts/RuleGauge.tsx';
import { sentence } from '../words/count.ts';
import { figure, withUnit } from '../words/figure.ts';
import styles from './TestLine.module.css';

export interface TestLineProps {
  readonly row: TestRow;
  readonly selected: boolean;
  readonly onSelect: (id: string) => void;
}

/** One test: where, with what, what is expected on the rule, the limit, and how a reading stands to both. */
export function TestLine({ row, selected, onSelect }: TestLineProps) {
  const { id, name, point, instrument, predicted, limit, wanted, reading, caution, conditions, suspects } = row;
  return (
    <li className={styles.test} data-selected={selected || undefined}>
      {caution !== undefined && (
        <p className={styles.caution}>
          <b>Caution.</b> {caution}
        </p>
      )}
      <div className={styles.what}>
        <button type="button" data-subject={id} aria-pressed={selected} onClick={() => onSelect(id)}>
          {name}
        </button>
        <p className="small">{sentence(point)}.</p>
        <p className="small quiet">{sentence(instrument)}.</p>
        {selected && conditions.length > 0 && (
          <p className="small quiet">{conditions.map((each) => each.replace(/\.$/, '')).join('. ')}.</p>
        )}
        {selected && suspects.length > 0 && (
          <ol className={styles.suspects}>
            {suspects.map((suspect) => (
              <li key={suspect}>{suspect}</li>
            ))}
          </ol>
        )}
      </div>
      <div className={styles.rule}>
        {predicted && (
          <RuleGauge
            unit={predicted.unit}
            width={190}
            predicted={{ low: predicted.low, middle: predicted.value, high: predicted.high }}
            {...(limit === undefined || limit.unit !== predicted.unit
              ? {}
              : { limit: { value: limit.value, sense: limit.sense } })}
            {...(reading === undefined ? {} : { needle: { value: reading.value, fails: reading.inLimit === false } })}
          />
        )}
      </div>
      <div className={styles.says}>
        {predicted && (
          <p>
            expected {withUnit(predicted.value, predicted.unit)}
            <span className="quiet">
              {' '}
              ({figure(predicted.low)} to {figure(predicted.high)})
            </span>
          </p>
        )}
        {wanted !== undefined && <p>{wanted}</p>}
        {limit && (
          <p className="quiet">
            {limit.sense} {withUnit(limit.value, limit.unit)}; {limit.clause}
          </p>
        )}
        {reading === undefined ? <p className="quiet">not read yet</p> : <ReadingSays reading={reading} />}
      </div>
    </li>
  );
}

function ReadingSays({
  reading: { value, unit, by, inLimit, nearPrediction },
}: {
  readonly reading: NonNullable<TestRow['reading']>;
}) {
  return (
    <>
      <p>
        <b>read {withUnit(value, unit)}</b> <span className="quiet">by {by}</span>
      </p>
      {inLimit !== undefined && (
        <p>
          <Mark state={inLimit ? 'meets' : 'fails'} size={14} /> {inLimit ? 'Meets' : 'Fails'} the limit.
        </p>
      )}
      {nearPrediction !== undefined && (
        <p>
          <Mark state={nearPrediction ? 'meets' : 'fails'} size={14} /> {nearPrediction ? 'Meets' : 'Fails'} the
          drawing.
        </p>
      )}
    </>
  );
}
